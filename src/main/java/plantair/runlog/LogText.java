package plantair.runlog;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import plantair.runlog.RefusedLog.Reason;

/**
 * The lines of a logger's file.
 *
 * @param code how its bytes were read
 * @param lines in their order, empty ones too
 */
public record LogText(TextCode code, List<String> lines) {

    /** So many lines are taken. */
    public static final int MOST_LINES = 100_000;

    /** So many bytes are taken, in millions. */
    public static final int MOST_MEGABYTES = 10;

    /** So many letters of a line are taken. */
    static final int LONGEST_LINE = 1_000;

    /**
     * Reads a file, telling its code from its bytes.
     *
     * @throws RefusedLog when it is no text, or more than is taken
     */
    public static LogText of(byte[] bytes) throws RefusedLog {
        return of(bytes, TextCode.of(bytes));
    }

    /** The same of a file on disk. */
    public static LogText of(Path file) throws IOException, RefusedLog {
        if (Files.size(file) > MOST_MEGABYTES * 1_000_000L) {
            throw new RefusedLog(Reason.TOO_LARGE, MOST_MEGABYTES);
        }
        return of(Files.readAllBytes(file));
    }

    /**
     * Reads a file that is written in a code.
     *
     * @throws RefusedLog when it is no text, or more than is taken
     */
    static LogText of(byte[] bytes, TextCode code) throws RefusedLog {
        String text = code.read(bytes);
        if (text.isBlank()) {
            throw new RefusedLog(Reason.EMPTY);
        }
        if (text.chars().anyMatch(LogText::isNoText)) {
            throw new RefusedLog(Reason.BINARY);
        }
        List<String> lines = text.lines().limit(MOST_LINES + 1L).toList();
        if (lines.size() > MOST_LINES) {
            throw new RefusedLog(Reason.TOO_MANY_LINES, MOST_LINES);
        }
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).length() > LONGEST_LINE) {
                throw new RefusedLog(Reason.LONG_LINE, i + 1, LONGEST_LINE);
            }
        }
        return new LogText(code, lines);
    }

    private static boolean isNoText(int c) {
        return c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f';
    }
}
