package plantair.trend;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.statistics.LineCrossing;
import plantair.statistics.LineCrossing.Kind;
import plantair.statistics.LineFit;
import plantair.trend.Crossing.Code;

/** When a line reaches a limit (T9). Nothing is said of days further off than twice the length of the record. */
final class Forecast {

    private static final double HEADLINE = 0.8;
    private static final double REACH = 2;

    private final TrendLine line;
    private final LineFit fit;
    private final double now;
    private final double furthest;

    Forecast(TrendLine line, LocalDate lastTest) {
        this.line = line;
        this.fit = line.sinceLastStep();
        this.now = line.years(lastTest);
        this.furthest = now + REACH * now;
    }

    Optional<Crossing> of(double limit, double uLimit) {
        double k = line.scatter().coverageFactor(TrendLine.CONFIDENCE);
        double u = fit.uncertaintyAt(now);
        if (fit.valueAt(now) + k * Math.sqrt(u * u + uLimit * uLimit) < limit) {
            return Optional.of(new Crossing(Code.ALREADY_BELOW, null, null, null, null, null));
        }
        LineCrossing headline = LineCrossing.of(fit, line.scatter().coverageFactor(HEADLINE), uLimit, limit);
        boolean told = headline.kind() == Kind.BOUNDED || headline.kind() == Kind.NOT_BEFORE;
        return fit.slope() < 0 && told
                ? Optional.of(crossing(headline, LineCrossing.of(fit, k, uLimit, limit)))
                : Optional.empty();
    }

    private Crossing crossing(LineCrossing headline, LineCrossing wide) {
        if (headline.earliest() > furthest) {
            return new Crossing(
                    Code.LATER_THAN,
                    null,
                    line.day(furthest),
                    null,
                    line.day(Math.min(wide.earliest(), furthest)),
                    null);
        }
        LocalDate latest = day(headline.latest());
        return new Crossing(
                latest == null ? Code.NOT_BEFORE : Code.BETWEEN,
                latest == null ? null : day(headline.best()),
                day(headline.earliest()),
                latest,
                day(wide.earliest()),
                day(wide.latest()));
    }

    /** Null for none and for one that is too far off. */
    private @Nullable LocalDate day(double years) {
        return years <= furthest ? line.day(years) : null;
    }
}
