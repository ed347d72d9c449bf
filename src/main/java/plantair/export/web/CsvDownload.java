package plantair.export.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;

/**
 * A file on its way to the browser. The response becomes a download with the first byte: what fails before that is answered
 * with an error page, and what fails later breaks the connection off, so that half a file cannot pass for a whole one.
 */
final class CsvDownload extends OutputStream {

    private final HttpServletResponse response;
    private final String name;

    CsvDownload(HttpServletResponse response, String name) {
        this.response = response;
        this.name = name;
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
            response.setContentType("text/csv;charset=UTF-8;header=present");
            response.setHeader(
                    HttpHeaders.CONTENT_DISPOSITION,
                    ContentDisposition.attachment().filename(name).build().toString());
        }
        return response.getOutputStream();
    }
}
