package plantair.runlog;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What stands between the columns of a logger's file. */
public enum Separator {
    /** Tab. */
    TAB('\t'),
    /** Semicolon. */
    SEMICOLON(';'),
    /** Comma. */
    COMMA(','),
    /** One blank or more. */
    BLANKS(' ');

    private static final Pattern BLANK = Pattern.compile("\\s+");
    private static final char QUOTE = '"';

    private final char mark;

    Separator(char mark) {
        this.mark = mark;
    }

    /** The cells of a line, without blanks and quotes round them. A mark inside quotes separates nothing. */
    public List<String> cells(String line) {
        if (this == BLANKS) {
            return List.of(BLANK.split(line.strip()));
        }
        List<String> cells = new ArrayList<>();
        int start = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == QUOTE) {
                quoted = !quoted;
            } else if (c == mark && !quoted) {
                cells.add(cell(line, start, i));
                start = i + 1;
            }
        }
        cells.add(cell(line, start, line.length()));
        return cells;
    }

    private static String cell(String line, int start, int end) {
        String cell = line.substring(start, end).strip();
        boolean quoted = cell.length() > 1 && cell.charAt(0) == QUOTE && cell.charAt(cell.length() - 1) == QUOTE;
        return quoted ? cell.substring(1, cell.length() - 1).strip() : cell;
    }
}
