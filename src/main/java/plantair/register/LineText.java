package plantair.register;

import org.jspecify.annotations.Nullable;

/** Puts texts into fields of one line: a tab ends a field, a line feed the line, a backslash stands before both. */
final class LineText {

    /** What stands for no text at all; no text is written like that. */
    private static final String NOTHING = "\\N";

    private LineText() {}

    static String of(@Nullable String text) {
        if (text == null) {
            return NOTHING;
        }
        return text.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r")
                .replace("\0", "\\0");
    }
}
