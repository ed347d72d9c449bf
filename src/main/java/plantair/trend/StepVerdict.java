package plantair.trend;

import java.time.LocalDate;
import plantair.statistics.PooledScatter;

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

    private static final double OF_INTEREST = 5;

    /**
     * From a step of ln q.
     *
     * @param u its standard uncertainty, with that scatter
     */
    static StepVerdict of(LocalDate date, double step, double u, PooledScatter scatter) {
        double half = scatter.coverageFactor(TrendLine.CONFIDENCE) * u;
        double detectable = YearlyChange.percent(scatter.detectionFactor(TrendLine.CONFIDENCE) * u);
        Code code = detectable <= OF_INTEREST ? Code.NO_CHANGE_SEEN : Code.CANNOT_BE_TOLD;
        return new StepVerdict(
                date,
                Math.abs(step) > half ? Code.LEVEL_CHANGED : code,
                YearlyChange.percent(step),
                YearlyChange.percent(step - half),
                YearlyChange.percent(step + half),
                detectable);
    }
}
