package plantair.export.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import plantair.export.AllFiles;

/**
 * A file on its way to the browser. The response becomes a download with the first byte: what fails before that is answered
 * with an error page, and what fails later breaks the connection off, so that half a file cannot pass for a whole one.
 */
final class Download extends OutputStream {

    private final HttpServletResponse response;
    private final String type;
    private final String name;

    private Download(HttpServletResponse response, String type, String name) {
        this.response = response;
        this.type = type;
        this.name = name;
    }

    static Download zip(HttpServletResponse response, String name) {
        return new Download(response, "application/zip", name);
    }

    /** A CSV file, its byte order mark written once something follows. */
    static Writer csv(HttpServletResponse response, String name) throws IOException {
        var file = new Download(response, "text/csv;charset=UTF-8;header=present", name);
        Writer out = new BufferedWriter(new OutputStreamWriter(file, StandardCharsets.UTF_8));
        out.write(AllFiles.BYTE_ORDER_MARK);
        return out;
    }

    @Override
    public void write(int b) throws IOException {
        open().write(b);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        open().write(bytes, offset, length);
    }

    @Override
    public void flush() throws IOException {
        open().flush();
    }

    private OutputStream open() throws IOException {
        if (!response.isCommitted()) {
            response.setContentType(type);
            response.setHeader(
                    HttpHeaders.CONTENT_DISPOSITION,
                    ContentDisposition.attachment().filename(name).build().toString());
        }
        return response.getOutputStream();
    }
}
