package plantair.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import org.springframework.http.HttpStatus;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.web.server.ResponseStatusException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The body of a request as JSON, within limits. */
final class JsonBody {

    /** As much as a form may send. */
    private static final int MOST_BYTES = 256 * 1024;

    /** Read and thrown away, since many a sender does not listen before all is sent. */
    private static final long MOST_SKIPPED = 16L * 1024 * 1024;

    private static final StreamReadConstraints CONSTRAINTS = StreamReadConstraints.builder()
            .maxNestingDepth(20)
            .maxNumberLength(100)
            .build();

    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(CONSTRAINTS)
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private JsonBody() {}

    /** @throws ResponseStatusException when it is not JSON, too much, or broken */
    static JsonNode of(HttpServletRequest request) throws IOException {
        if (!isJson(request.getContentType())) {
            throw new ResponseStatusException(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "Send application/json.");
        }
        InputStream in = request.getInputStream();
        byte[] body = in.readNBytes(MOST_BYTES + 1);
        if (body.length > MOST_BYTES) {
            in.skip(MOST_SKIPPED);
            throw new ResponseStatusException(HttpStatus.CONTENT_TOO_LARGE, "At most 256 KB are taken.");
        }
        return parse(body);
    }

    static JsonNode parse(byte[] body) {
        try {
            JsonNode node = JSON.readTree(body);
            if (!node.isMissingNode()) {
                return node;
            }
        } catch (JacksonException broken) {
            throw new ResponseStatusException(
                    HttpStatus.BAD_REQUEST, "The body is not JSON" + where(broken) + ".", broken);
        }
        throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "The body is empty.");
    }

    private static String where(JacksonException broken) {
        var location = broken.getLocation();
        return location == null ? "" : ": line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    private static boolean isJson(String contentType) {
        try {
            return contentType != null
                    && MediaType.parseMediaType(contentType).equalsTypeAndSubtype(MediaType.APPLICATION_JSON);
        } catch (InvalidMediaTypeException unreadable) {
            return false;
        }
    }
}
