package plantair.testing;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.jspecify.annotations.Nullable;

/** Photos and papers made on the spot. */
public final class SampleFiles {

    private SampleFiles() {}

    /** A picture of noise, so that it does not shrink; the same seed gives the same bytes. */
    public static byte[] picture(String format, int width, int height, long seed) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var random = new Random(seed);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt());
            }
        }
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    public static byte[] jpeg() {
        return picture("jpg", 60, 40, 1);
    }

    public static byte[] png() {
        return picture("png", 60, 40, 1);
    }

    public static byte[] pdf() {
        return pdf(null);
    }

    /** A paper that runs a program when it is opened; none where it is null. */
    public static byte[] pdf(@Nullable String program) {
        var out = new ByteArrayOutputStream();
        try (var document = new PDDocument()) {
            document.addPage(new PDPage());
            if (program != null) {
                document.getDocumentCatalog().setOpenAction(new PDActionJavaScript(program));
            }
            document.save(out, CompressParameters.NO_COMPRESSION);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /** A PNG of one colour, a few kilobytes at any size. */
    public static byte[] flatPng(int width, int height) {
        var out = new ByteArrayOutputStream();
        try (var file = new DataOutputStream(out)) {
            file.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
            var head = new ByteArrayOutputStream();
            var fields = new DataOutputStream(head);
            fields.writeInt(width);
            fields.writeInt(height);
            fields.write(new byte[] {1, 0, 0, 0, 0}); // one bit of grey a point
            chunk(file, "IHDR", head.toByteArray());
            var points = new ByteArrayOutputStream();
            try (var deflated = new DeflaterOutputStream(points)) {
                byte[] row = new byte[1 + (width + 7) / 8];
                for (int y = 0; y < height; y++) {
                    deflated.write(row);
                }
            }
            chunk(file, "IDAT", points.toByteArray());
            chunk(file, "IEND", new byte[0]);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static void chunk(DataOutputStream file, String type, byte[] data) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        var sum = new CRC32();
        sum.update(name);
        sum.update(data);
        file.writeInt(data.length);
        file.write(name);
        file.write(data);
        file.writeInt((int) sum.getValue());
    }

    /** Two files, one behind the other. */
    public static byte[] both(byte[] first, byte[] second) {
        var out = new ByteArrayOutputStream();
        out.writeBytes(first);
        out.writeBytes(second);
        return out.toByteArray();
    }

    public static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
