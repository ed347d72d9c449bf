package plantair.transfer;

import org.springframework.context.MessageSourceResolvable;
import org.springframework.context.support.DefaultMessageSourceResolvable;

/**
 * Something to say of a place in a file.
 *
 * @param file name of the file
 * @param line line in the file, from 1; 0 for the whole file
 * @param column name of the column; empty for the whole line
 * @param words what is to be said
 */
public record Remark(String file, long line, String column, MessageSourceResolvable words) {

    static MessageSourceResolvable words(String code, Object... args) {
        Object[] texts = new Object[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = short40(String.valueOf(args[i]));
        }
        return new DefaultMessageSourceResolvable(new String[] {code}, texts, code);
    }

    /** Cut so that a message stays readable. */
    private static String short40(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
