package plantair.attachment.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.attachment.Attachment;
import plantair.attachment.Attachments;
import plantair.attachment.Pieces;
import plantair.web.NoSuchRecord;

/** The bytes of a photo or paper. Whatever they hold, a browser runs nothing of it. */
@Controller
final class AttachmentFileController {

    static final String POLICY = "default-src 'none'; sandbox; frame-ancestors 'none'";

    private final Attachments attachments;
    private final Pieces pieces;

    AttachmentFileController(Attachments attachments, Pieces pieces) {
        this.attachments = attachments;
        this.pieces = pieces;
    }

    @GetMapping("/attachments/{id:\\d+}/file")
    void file(@PathVariable long id, HttpServletResponse response) throws IOException {
        Attachment attachment = attachments.findById(id).orElseThrow(() -> new NoSuchRecord("attachment " + id));
        boolean picture = attachment.format().isPicture();
        response.setContentType(attachment.format().mediaType());
        response.setContentLengthLong(attachment.byteCount());
        response.setHeader("Content-Security-Policy", POLICY);
        response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
        response.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                (picture ? ContentDisposition.inline() : ContentDisposition.attachment())
                        .filename(attachment.fileName(), StandardCharsets.UTF_8)
                        .build()
                        .toString());
        pieces.write(attachment.sha256(), response.getOutputStream());
    }
}
