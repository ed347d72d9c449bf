package plantair.export;

/** Text that a spreadsheet does not run as a formula. */
final class SafeText {

    /** ASCII and full-width signs with which spreadsheets start a formula. */
    private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private SafeText() {}

    /** The text, behind an apostrophe when it starts as a formula does, blanks before it left aside. */
    static String of(String text) {
        return startsAsFormula(text) ? "'" + text : text;
    }

    private static boolean startsAsFormula(String text) {
        if (text.startsWith("\t") || text.startsWith("\r")) {
            return true;
        }
        return text.codePoints().dropWhile(SafeText::isBlank).limit(1).anyMatch(first -> FORMULA.indexOf(first) >= 0);
    }

    private static boolean isBlank(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c) || c == '\uFEFF';
    }
}
