package plantair.register;

/** Puts texts into fields of one line: a tab ends a field, a line feed the line, a backslash stands before both. */
final class LineText {

    private LineText() {}

    static String of(String text) {
        return text.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }
}
