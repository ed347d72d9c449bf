package plantair.web;

import java.util.List;

/**
 * A sentence with figures in it.
 *
 * @param code message key of its text
 * @param figures arguments of the text, formatted already
 */
public record Words(String code, List<String> figures) {

    /** Copies the figures. */
    public Words {
        figures = List.copyOf(figures);
    }

    public static Words of(String code, String... figures) {
        return new Words(code, List.of(figures));
    }

    /** The figures as the message lookup of a template takes them. */
    public Object[] arguments() {
        return figures.toArray();
    }
}
