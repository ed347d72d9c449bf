package plantair.paper;

import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** A PDF on its way to the browser, as a download: the policy of this site keeps viewers inside pages out. */
public final class PdfDownload {

    private PdfDownload() {}

    /** The answer, with a name under which it is kept. */
    public static ResponseEntity<byte[]> of(byte[] file, String name) {
        ContentDisposition disposition = ContentDisposition.attachment()
                .filename(name, StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition.toString())
                .body(file);
    }
}
