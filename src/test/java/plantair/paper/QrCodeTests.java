package plantair.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The codes are read by the reader of the same library, which is a program of its own. */
final class QrCodeTests {

    private static final String ADDRESS = "https://air.example.org/guided?tag=C-1%20%C3%84";
    private static final Pattern MODULE = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");
    private static final int SCALE = 6;

    @Test
    void drawsWhatAReaderReads() throws ReaderException {
        QrCode code = QrCode.of(ADDRESS);

        assertThat(read(drawn(code))).isEqualTo(ADDRESS);
    }

    @Test
    void makesAPictureThatAReaderReads() throws IOException, ReaderException {
        String image = QrCode.of(ADDRESS).image();

        assertThat(image).startsWith("data:image/png;base64,");
        byte[] png = Base64.getDecoder().decode(image.substring(image.indexOf(',') + 1));
        assertThat(read(ImageIO.read(new ByteArrayInputStream(png)))).isEqualTo(ADDRESS);
    }

    /** Grease over a tenth of it, in one place. */
    @Test
    void isReadWithADirtyPlace() throws ReaderException {
        QrCode code = QrCode.of(ADDRESS);
        BufferedImage image = drawn(code);
        int side = image.getWidth() / 4;
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                image.setRGB(image.getWidth() / 2 + x - side / 2, image.getHeight() / 2 + y - side / 2, 0);
            }
        }

        assertThat(read(image)).isEqualTo(ADDRESS);
    }

    @Test
    void refusesWhatNoCodeHolds() {
        assertThatThrownBy(() -> QrCode.of("x".repeat(4000))).isInstanceOf(IllegalArgumentException.class);
    }

    private static BufferedImage drawn(QrCode code) {
        int size = code.size() * SCALE;
        var image = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
        var pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, size, size);
        pen.setColor(Color.BLACK);
        Matcher modules = MODULE.matcher(code.path());
        while (modules.find()) {
            pen.fillRect(
                    Integer.parseInt(modules.group(1)) * SCALE,
                    Integer.parseInt(modules.group(2)) * SCALE,
                    SCALE,
                    SCALE);
        }
        pen.dispose();
        return image;
    }

    private static String read(BufferedImage image) throws ReaderException {
        int[] points = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        var source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), points);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)))
                .getText();
    }
}
