package plantair.paper;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import plantair.web.UnitSet;

/** The sheets that offices have. */
public enum PaperSize {
    /** 210 by 297 mm. */
    A4,
    /** 8.5 by 11 in. */
    LETTER;

    /** The one asked for by name; else the one that goes with a person's units. */
    public static PaperSize of(@Nullable String name, UnitSet units) {
        if ("a4".equals(name)) {
            return A4;
        }
        return "letter".equals(name) || units == UnitSet.US ? LETTER : A4;
    }

    /** As a style sheet calls it. */
    String css() {
        return this == A4 ? "A4" : name().toLowerCase(Locale.ROOT);
    }
}
