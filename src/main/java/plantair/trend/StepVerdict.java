package plantair.trend;

import java.time.LocalDate;

/**
 * Whether output changed at a recorded event (T6).
 *
 * @param date day of the event; tests of that day count as after it
 * @param code what can be said
 * @param percent change of level, below zero for a loss
 * @param lowPercent lower end of the 95 % interval
 * @param highPercent upper end of the 95 % interval
 * @param detectablePercent smallest change that would probably have been seen
 */
public record StepVerdict(
        LocalDate date, Code code, double percent, double lowPercent, double highPercent, double detectablePercent) {

    /** What can be said of a step. */
    public enum Code {
        /** The interval leaves zero out. */
        LEVEL_CHANGED,
        /** The interval holds zero, and a change of five percent would have been seen. */
        NO_CHANGE_SEEN,
        /** The interval holds zero and is wide. */
        CANNOT_BE_TOLD
    }
}
