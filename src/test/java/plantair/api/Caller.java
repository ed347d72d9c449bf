package plantair.api;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import plantair.testing.People;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Another program that asks over the wire, with Ann's name and password. */
record Caller(int port) {

    private static final HttpClient HTTP = HttpClient.newHttpClient();

    static final JsonMapper JSON = JsonMapper.builder().build();

    /** The example of the description, to be changed by a test. */
    static ObjectNode example() {
        try (var in = Caller.class.getResourceAsStream("/api/evaluate-request.json")) {
            return (ObjectNode) JSON.readTree(in);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    record Answer(int status, String contentType, String body) {

        JsonNode json() {
            return JSON.readTree(body);
        }

        List<String> fields() {
            return json().get("errors")
                    .valueStream()
                    .map(error -> error.get("field").stringValue())
                    .toList();
        }

        List<String> codes() {
            return json().get("errors")
                    .valueStream()
                    .map(error -> error.get("code").stringValue())
                    .toList();
        }
    }

    Answer evaluate(JsonNode body) {
        return evaluate(body, "");
    }

    Answer evaluate(JsonNode body, String query) {
        return post(query, "application/json", body.toString().getBytes(StandardCharsets.UTF_8));
    }

    Answer evaluate(String body) {
        return post("", "application/json", body.getBytes(StandardCharsets.UTF_8));
    }

    Answer post(String query, String contentType, byte[] body, String... headers) {
        var request = request(EvaluateController.PATH + query)
                .header("Content-Type", contentType)
                .POST(BodyPublishers.ofByteArray(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return send(request.build());
    }

    Answer send(HttpRequest request) {
        try {
            HttpResponse<String> answer = HTTP.send(request, BodyHandlers.ofString());
            return new Answer(
                    answer.statusCode(),
                    answer.headers().firstValue("content-type").orElse(""),
                    answer.body());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Authorization", People.basic());
    }
}
