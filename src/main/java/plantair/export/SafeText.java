package plantair.export;

/** Text that a spreadsheet does not run as a formula. */
public final class SafeText {

    /** ASCII and full-width signs with which spreadsheets start a formula. */
    private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private SafeText() {}

    /**
     * The text, behind an apostrophe when it starts as a formula does, blanks before it left aside. A text that begins with
     * apostrophes and then as a formula gets one more, so that {@link #undo} gives every text back.
     */
    static String of(String text) {
        return startsAsFormula(bare(text)) ? "'" + text : text;
    }

    /** The text as it was before {@link #of}. */
    public static String undo(String cell) {
        return cell.startsWith("'") && startsAsFormula(bare(cell)) ? cell.substring(1) : cell;
    }

    private static String bare(String text) {
        int first = 0;
        while (first < text.length() && text.charAt(first) == '\'') {
            first++;
        }
        return text.substring(first);
    }

    private static boolean startsAsFormula(String text) {
        if (text.startsWith("\t") || text.startsWith("\r")) {
            return true;
        }
        int first = 0;
        while (first < text.length() && isBlank(text.charAt(first))) {
            first++;
        }
        return first < text.length() && FORMULA.indexOf(text.charAt(first)) >= 0;
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c) || c == '\uFEFF';
    }
}
