package plantair.due;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What a site says of an interval.
 *
 * @param site its name
 * @param kind of what
 * @param months null where the site wants none
 * @param authority who asks for it, in the words of the site; may be empty
 */
public record IntervalFacts(
        String site, DueKind kind, @Nullable Integer months, String authority) implements Facts {

    @Override
    public String name() {
        return site + ", " + kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("interval", months == null ? "none" : months + " months")
                .add("authority", authority)
                .toString();
    }
}
