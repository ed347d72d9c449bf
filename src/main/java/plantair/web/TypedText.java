package plantair.web;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.quantity.Unit;

/** The text of a reading for a register's page: as typed, and in the person's unit where that is another one. */
public final class TypedText {

    private TypedText() {}

    /**
     * {@code 5280 ft}, or {@code 5280 ft (1609 m)}.
     *
     * @param typed the reading; null when there is none
     * @param shown the person's unit
     * @param inShown formats the reading in that unit
     * @return null when there is no reading
     */
    public static @Nullable String of(@Nullable Entered typed, Unit shown, Function<Entered, String> inShown) {
        if (typed == null) {
            return null;
        }
        return typed.unit() == shown ? typed.toString() : typed + " (" + inShown.apply(typed) + ")";
    }
}
