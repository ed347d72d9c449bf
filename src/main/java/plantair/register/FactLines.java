package plantair.register;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/**
 * Builds the text of facts, one {@code name: value} a line; a fact that is not known is left out. Further lines of a
 * value are indented, so that no typed text can pass for another fact.
 */
public final class FactLines {

    private static final String INDENT = "    ";

    private final StringJoiner lines = new StringJoiner("\n");

    /** The single facts of a text that this class built. */
    public static List<String> split(String text) {
        return List.of(text.split("\n(?!" + INDENT + ")"));
    }

    /** Adds a fact. */
    public FactLines add(String name, @Nullable Object value) {
        String text = words(value);
        if (!text.isEmpty()) {
            lines.add(name + ": " + text.replace("\n", "\n" + INDENT));
        }
        return this;
    }

    private static String words(@Nullable Object value) {
        if (value instanceof Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        return value == null ? "" : value.toString();
    }

    @Override
    public String toString() {
        return lines.toString();
    }
}
