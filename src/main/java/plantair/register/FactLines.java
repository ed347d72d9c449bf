package plantair.register;

import java.util.Objects;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/** Builds the text of facts, one {@code name: value} a line; a fact that is not known is left out. */
public final class FactLines {

    private final StringJoiner lines = new StringJoiner("\n");

    /** Adds a fact. */
    public FactLines add(String name, @Nullable Object value) {
        String text = Objects.toString(value, "");
        if (!text.isEmpty()) {
            lines.add(name + ": " + text);
        }
        return this;
    }

    @Override
    public String toString() {
        return lines.toString();
    }
}
