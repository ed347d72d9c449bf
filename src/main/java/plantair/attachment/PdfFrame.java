package plantair.attachment;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Looks whether a PDF is whole: its end leads to its table of contents. It is not unpacked, since a small file can unpack
 * to any size. Source: ISO 32000-1, 7.5.5.
 */
final class PdfFrame {

    /** Readers look for the end in so many last bytes. */
    private static final int TAIL = 1024;

    private static final Pattern END =
            Pattern.compile("startxref[\\r\\n\\t ]+(\\d{1,10})[\\r\\n\\t ]+%%EOF[\\r\\n\\t \\x00]*$");

    private static final Pattern TABLE = Pattern.compile("^\\s*(xref\\s|\\d+\\s+\\d+\\s+obj)");

    private PdfFrame() {}

    /** @throws RefusedFile when it breaks off, its end leads nowhere, or it brings a program with it */
    static void check(Path path) throws IOException, RefusedFile {
        try (var file = new RandomAccessFile(path.toFile(), "r")) {
            Matcher end = END.matcher(read(file, Math.max(0, file.length() - TAIL), TAIL));
            if (!end.find() || !isTable(file, Long.parseLong(end.group(1)))) {
                throw new RefusedFile(RefusedFile.Reason.BROKEN);
            }
        }
        try (InputStream in = Files.newInputStream(path)) {
            if (HiddenParts.PROGRAM_IN_A_PAPER.areIn(in)) {
                throw new RefusedFile(RefusedFile.Reason.PROGRAM);
            }
        }
    }

    private static boolean isTable(RandomAccessFile file, long offset) throws IOException {
        return offset < file.length() && TABLE.matcher(read(file, offset, 40)).find();
    }

    private static String read(RandomAccessFile file, long from, int most) throws IOException {
        file.seek(from);
        byte[] bytes = new byte[(int) Math.min(most, file.length() - from)];
        file.readFully(bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
