package plantair.attachment;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Stream;

/** Looks for words in bytes, without regard to capitals. */
enum HiddenParts {
    /** Where an archive, a paper, a page or a program begins. */
    BEHIND_A_PICTURE("pk\u0003\u0004", "%pdf-", "<html", "<script", "<svg", "<?php", "#!/", "this program cannot"),
    /** What makes a paper do something by itself. */
    PROGRAM_IN_A_PAPER("/javascript", "/launch");

    private static final int BLOCK = 65_536;

    private final String[] words;

    HiddenParts(String... words) {
        this.words = words;
    }

    /** Whether one of the words is in what is left of a stream. */
    boolean areIn(InputStream in) throws IOException {
        int longest = Stream.of(words).mapToInt(String::length).max().orElse(1);
        String tail = "";
        byte[] block = in.readNBytes(BLOCK);
        while (block.length > 0) {
            String text = tail + new String(block, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
            if (Stream.of(words).anyMatch(text::contains)) {
                return true;
            }
            tail = text.substring(Math.max(0, text.length() - longest + 1));
            block = in.readNBytes(BLOCK);
        }
        return false;
    }
}
