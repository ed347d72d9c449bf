package plantair.attachment;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Decodes a whole picture to see that it is one, keeping only every so manieth point of it. */
final class Picture {

    private static final int KEPT = 256;

    private Picture() {}

    /**
     * Decodes it.
     *
     * @param mostPoints width times height that are looked at; told by the head of the file, before anything is unpacked
     * @throws RefusedFile when it has more, or cannot be decoded to its end
     */
    static void check(Path file, FileFormat format, long mostPoints) throws IOException, RefusedFile {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.ending());
        ImageReader reader = readers.next();
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            reader.setInput(in, true, true);
            long points = (long) reader.getWidth(0) * reader.getHeight(0);
            if (points > mostPoints) {
                throw new RefusedFile(RefusedFile.Reason.TOO_MANY_POINTS, millions(points), millions(mostPoints));
            }
            int step = 1 + Math.max(reader.getWidth(0), reader.getHeight(0)) / KEPT;
            ImageReadParam every = reader.getDefaultReadParam();
            every.setSourceSubsampling(step, step, 0, 0);
            decode(reader, every);
        } catch (IOException undecodable) {
            throw new RefusedFile(RefusedFile.Reason.BROKEN);
        } finally {
            reader.dispose();
        }
    }

    /** What a decoder throws at bytes made up to confuse it is not always an IOException. */
    private static void decode(ImageReader reader, ImageReadParam every) throws IOException, RefusedFile {
        try {
            reader.read(0, every);
        } catch (RuntimeException confused) {
            throw new RefusedFile(RefusedFile.Reason.BROKEN);
        }
    }

    private static String millions(long points) {
        return String.valueOf((points + 999_999) / 1_000_000);
    }
}
