package plantair.trend;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When the line reaches a limit (T9).
 *
 * @param code what can be said
 * @param best most likely day; null unless the code is {@code BETWEEN}
 * @param earliest first day of the 80 % interval; null when already below
 * @param latest last day of the 80 % interval; null when none can be given
 * @param earliest95 first day of the 95 % interval; null when already below
 * @param latest95 last day of the 95 % interval; null when none can be given
 */
public record Crossing(
        Code code,
        @Nullable LocalDate best,
        @Nullable LocalDate earliest,
        @Nullable LocalDate latest,
        @Nullable LocalDate earliest95,
        @Nullable LocalDate latest95) {

    /** What can be said of a crossing. */
    public enum Code {
        /** Between two days, at 80 %. */
        BETWEEN,
        /** Not before a day; no last day can be given. */
        NOT_BEFORE,
        /** Further off than the record allows to tell; {@code earliest} is the furthest day that it does. */
        LATER_THAN,
        /** Already below. */
        ALREADY_BELOW
    }
}
