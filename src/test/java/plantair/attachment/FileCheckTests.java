package plantair.attachment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static plantair.testing.SampleFiles.ascii;
import static plantair.testing.SampleFiles.both;
import static plantair.testing.SampleFiles.flatPng;
import static plantair.testing.SampleFiles.jpeg;
import static plantair.testing.SampleFiles.pdf;
import static plantair.testing.SampleFiles.picture;
import static plantair.testing.SampleFiles.png;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plantair.attachment.RefusedFile.Reason;

/** What may be attached, told from the bytes. */
final class FileCheckTests {

    private static final long MOST_MEGAPIXELS = 64;

    @TempDir
    private Path folder;

    private final FileCheck check = new FileCheck(MOST_MEGAPIXELS);

    private FileFormat format(byte[] bytes) throws IOException, RefusedFile {
        return check.check(Files.write(folder.resolve("file"), bytes));
    }

    private Reason reason(byte[] bytes) throws IOException {
        try {
            return fail("taken as " + format(bytes));
        } catch (RefusedFile refused) {
            return refused.reason();
        }
    }

    static Stream<Arguments> sound() {
        return Stream.of(
                arguments(jpeg(), FileFormat.JPEG),
                arguments(picture("jpg", 3000, 2000, 7), FileFormat.JPEG),
                arguments(png(), FileFormat.PNG),
                arguments(picture("png", 1, 1, 7), FileFormat.PNG),
                arguments(flatPng(8000, 8000), FileFormat.PNG),
                arguments(pdf(), FileFormat.PDF),
                arguments(both(pdf(), ascii("\r\n\0\0")), FileFormat.PDF),
                // behind a photo of a phone: a second picture, or a few seconds of film
                arguments(both(jpeg(), picture("jpg", 9, 9, 3)), FileFormat.JPEG),
                arguments(both(jpeg(), ascii("\0\0\0\u0018ftypmp42....")), FileFormat.JPEG));
    }

    @ParameterizedTest
    @MethodSource("sound")
    void takesWhatIsWhole(byte[] bytes, FileFormat format) throws IOException, RefusedFile {
        assertThat(format(bytes)).isEqualTo(format);
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                arguments("nothing", new byte[0], Reason.EMPTY),
                arguments("a program called .jpg", ascii("MZ\u0090\0\3\0\0\0 program"), Reason.UNKNOWN),
                arguments("a page", ascii("<html><script>1</script></html>"), Reason.UNKNOWN),
                arguments("a drawing that can hold a program", ascii("<svg xmlns='x'></svg>"), Reason.UNKNOWN),
                arguments("a GIF", picture("gif", 9, 9, 1), Reason.UNKNOWN),
                arguments("a HEIC photo", ascii("\0\0\0\u0018ftypheic\0\0\0\0mif1heic"), Reason.HEIC),
                arguments("a WebP picture", ascii("RIFF\u0024\0\0\0WEBPVP8 "), Reason.WEBP),
                arguments("a page before a paper", both(ascii("<html>"), pdf()), Reason.UNKNOWN),
                arguments("a picture with an archive behind", both(jpeg(), ascii("PK\3\4....")), Reason.MORE_BEHIND),
                arguments("a picture with a page behind", both(jpeg(), ascii("<HTML>")), Reason.MORE_BEHIND),
                arguments("a picture with a paper behind", both(jpeg(), pdf()), Reason.MORE_BEHIND),
                arguments("a PNG with anything behind", both(png(), ascii("x")), Reason.MORE_BEHIND),
                arguments("a paper with a page behind", both(pdf(), ascii("<html>")), Reason.BROKEN),
                arguments("a paper with a program", pdf("app.alert(1)"), Reason.PROGRAM),
                arguments("the head of a JPEG alone", ascii("\u00FF\u00D8\u00FF\u00E0"), Reason.BROKEN),
                arguments("the head of a PDF alone", ascii("%PDF-1.7\n"), Reason.BROKEN),
                arguments("400 million points", flatPng(20_000, 20_000), Reason.TOO_MANY_POINTS));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void refuses(String what, byte[] bytes, Reason reason) throws IOException {
        assertThat(reason(bytes)).as(what).isEqualTo(reason);
    }

    /** Cut at fifty places each, by a fixed seed. */
    @Test
    void refusesWhatBreaksOff() throws IOException {
        var random = new Random(6);
        for (byte[] whole : List.of(jpeg(), png(), pdf())) {
            for (int i = 0; i < 50; i++) {
                byte[] cut = Arrays.copyOf(whole, 12 + random.nextInt(whole.length - 13));

                assertThat(reason(cut)).isEqualTo(Reason.BROKEN);
            }
        }
    }

    /** A PNG has a sum over each of its parts, so any altered byte is found. */
    @Test
    void refusesADamagedPng() throws IOException {
        byte[] whole = png();
        var random = new Random(7);
        for (int i = 0; i < 100; i++) {
            byte[] damaged = whole.clone();
            damaged[8 + random.nextInt(whole.length - 8)] ^= (byte) (1 + random.nextInt(255));

            assertThat(reason(damaged)).isIn(Reason.BROKEN, Reason.MORE_BEHIND);
        }
    }

    /** Whatever the bytes: taken or refused, never another failure. Fixed seeds. */
    @Test
    void neverFailsOtherwise() throws IOException {
        int taken = 0;
        for (int seed = 0; seed < 300; seed++) {
            var random = new Random(seed);
            byte[] mangled = List.of(jpeg(), png(), pdf()).get(seed % 3).clone();
            for (int i = 0; i < 4; i++) {
                mangled[random.nextInt(mangled.length)] = (byte) random.nextInt();
            }
            try {
                format(mangled);
                taken++;
            } catch (RefusedFile refused) {
                assertThat(refused.reason()).isNotNull();
            }
        }
        assertThat(taken).isBetween(1, 299);
    }

    @Test
    void looksAtAllPointsThatItTakesInLittleRoom() throws IOException, RefusedFile {
        Runtime.getRuntime().gc();
        long before = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();

        format(flatPng(8000, 8000));

        long after = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
        assertThat(after - before).as("bytes, of 64 million points").isLessThan(60_000_000);
    }

    @Test
    void receivesNoMoreThanItMay() throws IOException, RefusedFile {
        byte[] ten = new byte[10];
        try (ReceivedFile received = ReceivedFile.of(new ByteArrayInputStream(ten), 10)) {
            assertThat(received.size()).isEqualTo(10);
            // of ten zero bytes, by sha256sum of GNU coreutils
            assertThat(received.sha256()).isEqualTo("01d448afd928065458cf670b60f5a594d735af0172c8d67f22a81680132681ca");
        }
        assertThatThrownBy(() -> ReceivedFile.of(new ByteArrayInputStream(ten), 9))
                .isInstanceOf(RefusedFile.class)
                .hasMessageContaining("TOO_LARGE");
    }
}
