package plantair.attachment;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Tells what a file is, from all of its bytes, and refuses what may not be attached. */
@Component
public class FileCheck {

    private final long mostPoints;

    FileCheck(@Value("${plantair.attachments.most-megapixels:64}") long mostMegapixels) {
        this.mostPoints = mostMegapixels * 1_000_000;
    }

    /**
     * Looks at a file; one at a time, so that many large pictures at once take no more room than one.
     *
     * @throws RefusedFile when it may not be attached
     */
    public synchronized FileFormat check(Path file) throws IOException, RefusedFile {
        FileFormat format = FileStart.format(start(file));
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            switch (format) {
                case JPEG -> JpegSegments.check(in);
                case PNG -> PngChunks.check(in);
                case PDF -> PdfFrame.check(file);
            }
        }
        if (format.isPicture()) {
            Picture.check(file, format, mostPoints);
        }
        return format;
    }

    private static byte[] start(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(FileStart.LENGTH);
        }
    }
}
