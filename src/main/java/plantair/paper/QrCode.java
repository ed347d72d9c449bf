package plantair.paper;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import javax.imageio.ImageIO;

/**
 * An address as a QR code, with the quiet margin of four modules that a reader needs. A quarter of it may be dirty. Source:
 * ISO/IEC 18004.
 */
public final class QrCode {

    private static final int MARGIN = 4;
    private static final int PIXELS = 8;
    private static final int WHITE = 0xFFFFFF;

    private final ByteMatrix modules;
    private final String text;

    private QrCode(ByteMatrix modules, String text) {
        this.modules = modules;
        this.text = text;
    }

    /** @throws IllegalArgumentException when the text is too long for any code */
    public static QrCode of(String text) {
        try {
            return new QrCode(Encoder.encode(text, ErrorCorrectionLevel.Q).getMatrix(), text);
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no QR code holds " + text.length() + " characters", tooLong);
        }
    }

    /** The address in it. */
    public String text() {
        return text;
    }

    /** Width and height in modules, margin included. */
    public int size() {
        return modules.getWidth() + 2 * MARGIN;
    }

    /** The dark modules as the path of an SVG whose unit is a module. */
    public String path() {
        var path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y) == 1) {
                    path.append('M')
                            .append(x + MARGIN)
                            .append(' ')
                            .append(y + MARGIN)
                            .append("h1v1h-1z");
                }
            }
        }
        return path.toString();
    }

    /** The same as a picture in the address of an image. */
    public String image() {
        var image = new BufferedImage(size() * PIXELS, size() * PIXELS, BufferedImage.TYPE_BYTE_BINARY);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                image.setRGB(x, y, isDark(x / PIXELS - MARGIN, y / PIXELS - MARGIN) ? 0 : WHITE);
            }
        }
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(out.toByteArray());
    }

    private boolean isDark(int x, int y) {
        boolean inside = x >= 0 && y >= 0 && x < modules.getWidth() && y < modules.getHeight();
        return inside && modules.get(x, y) == 1;
    }
}
