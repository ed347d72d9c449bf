package plantair.trend;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.statistics.Column;
import plantair.statistics.LeastSquares;
import plantair.statistics.LineFit;
import plantair.statistics.PooledScatter;
import plantair.statistics.Score;

/**
 * The line through a record: level, steps, slope, and the errors that change inside the record (T2, T6, T7). The scatter is
 * judged first, with an offset of its own for each such error; then the line is fitted with the scatter so found (T3).
 */
final class TrendLine {

    static final double CONFIDENCE = 0.95;

    private static final double STATED_DEGREES_OF_FREEDOM = 4;

    /** The stated uncertainties alone, when there is no scatter to look at. */
    static final PooledScatter STATED = PooledScatter.of(0, 0, STATED_DEGREES_OF_FREEDOM);

    private static final double DAYS_PER_YEAR = 365.25;
    private static final int FEWEST_TESTS = 3;
    private static final double SURELY_BENT = 0.01;

    private final List<OutputPoint> points;
    private final Steps steps;
    private final SharedErrors errors;
    private final double[] t;
    private final double[] y;
    private final @Nullable LocalDate bend;
    private final PooledScatter scatter;
    private final LeastSquares fit;

    private TrendLine(List<OutputPoint> points, Steps steps, SharedErrors errors) {
        this.points = points;
        this.steps = steps;
        this.errors = errors;
        int n = points.size();
        t = new double[n];
        y = new double[n];
        double[] r = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = years(points.get(i).date());
            y[i] = StrictMath.log(points.get(i).flow().cubicMetresPerSecond());
            r[i] = points.get(i).relativeU();
        }
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        List<Column> columns = new ArrayList<>(List.of(Column.free(ones)));
        columns.addAll(steps.columns());
        columns.add(Column.free(t));
        bend = bend(columns, r);
        if (bend != null) {
            columns.add(bent(bend));
        }
        LeastSquares free = apart(columns, r);
        scatter = PooledScatter.of(free.chiSquare(), free.degreesOfFreedom(), STATED_DEGREES_OF_FREEDOM);
        for (int i = 0; i < n; i++) {
            r[i] *= scatter.s();
        }
        columns.addAll(errors.asKnown());
        fit = LeastSquares.fit(columns, y, r);
    }

    /** The fit with an offset of its own for each error that changes inside the record. */
    private LeastSquares apart(List<Column> columns, double[] r) {
        List<Column> apart = new ArrayList<>(columns);
        apart.addAll(errors.asFree());
        return LeastSquares.fit(apart, y, r);
    }

    /**
     * The day of the last step between many tests, when the slope before it surely was another one (F-test of one more
     * unknown, which is Student's); else null.
     */
    private @Nullable LocalDate bend(List<Column> columns, double[] r) {
        int step = steps.lastBetweenMany();
        if (step < 0) {
            return null;
        }
        LocalDate day = steps.from(step);
        List<Column> both = new ArrayList<>(columns);
        both.add(bent(day));
        LeastSquares free = apart(both, r);
        int nu = free.degreesOfFreedom();
        if (nu < 1 || free.chiSquare() == 0 || !free.isDetermined(columns.size())) {
            return null;
        }
        double u = Math.sqrt(free.chiSquare() / nu) * free.uncertainty(columns.size());
        return Score.of(free.value(columns.size()), u, nu).probability() < SURELY_BENT ? day : null;
    }

    /** What the slope before a day has more than the one after it. */
    private Column bent(LocalDate day) {
        return Column.free(points.stream()
                .mapToDouble(point -> Math.min(0, years(point.date()) - years(day)))
                .toArray());
    }

    /** The day from which on the line has another slope than before; null when it has one throughout. */
    @Nullable
    LocalDate bend() {
        return bend;
    }

    /**
     * The line of a record, or null: fewer than three tests, all on one day, steps between all of them, or a change that is
     * too large for a number.
     *
     * @param points in order of their dates
     */
    static @Nullable TrendLine of(List<OutputPoint> points, Steps steps, SharedErrors errors) {
        int n = points.size();
        if (n < FEWEST_TESTS || points.get(0).date().equals(points.get(n - 1).date())) {
            return null;
        }
        TrendLine line = new TrendLine(points, steps, errors);
        return line.fit.isDetermined(line.slopeIndex()) && line.change().isFinite() ? line : null;
    }

    private int slopeIndex() {
        return 1 + steps.count();
    }

    /** Years since the first test. */
    double years(LocalDate date) {
        return ChronoUnit.DAYS.between(points.get(0).date(), date) / DAYS_PER_YEAR;
    }

    /** The day that many years after the first test; the first test itself for a time before it. */
    LocalDate day(double years) {
        return points.get(0).date().plusDays((long) Math.floor(Math.max(0, years) * DAYS_PER_YEAR));
    }

    double slope() {
        return fit.value(slopeIndex());
    }

    double uSlope() {
        return fit.uncertainty(slopeIndex());
    }

    PooledScatter scatter() {
        return scatter;
    }

    SharedErrors errors() {
        return errors;
    }

    YearlyChange change() {
        return YearlyChange.of(slope(), uSlope(), scatter.coverageFactor(CONFIDENCE));
    }

    /** Whether the interval of the slope at this confidence leaves zero out: its sign, else 0. */
    int direction(double confidence) {
        boolean told = Math.abs(slope()) > scatter.coverageFactor(confidence) * uSlope();
        return told ? (int) Math.signum(slope()) : 0;
    }

    double step(int j) {
        return fit.value(1 + j);
    }

    double uStep(int j) {
        return fit.uncertainty(1 + j);
    }

    /** What a test of that day has of level, steps, slope and changing errors. */
    private double[] parts(LocalDate date, double[] errorParts) {
        int others = slopeIndex() + (bend == null ? 1 : 2);
        double[] parts = new double[others + errors.count()];
        parts[0] = 1;
        for (int j = 0; j < steps.count(); j++) {
            parts[1 + j] = steps.part(j, date);
        }
        parts[slopeIndex()] = years(date);
        if (bend != null) {
            parts[others - 1] = Math.min(0, years(date) - years(bend));
        }
        for (int k = 0; k < errors.count(); k++) {
            parts[others + k] = errorParts[k];
        }
        return parts;
    }

    Level level(LocalDate date) {
        double[] parts = parts(date, new double[errors.count()]);
        double y = fit.valueAt(parts);
        double u = fit.uncertaintyAt(parts);
        double k = scatter.coverageFactor(CONFIDENCE);
        return new Level(flow(y), u, flow(y - k * u), flow(y + k * u));
    }

    private static FlowRate flow(double y) {
        return new FlowRate(StrictMath.exp(y));
    }

    Expectation expectation(OutputPoint next) {
        double[] parts = parts(next.date(), errors.partsOf(next));
        return new Expectation(fit.valueAt(parts), fit.uncertaintyAt(parts), errors.varianceBeyond(next), scatter);
    }

    /** The line after the last step. */
    LineFit sinceLastStep() {
        double[] start = parts(points.get(0).date(), new double[errors.count()]);
        Arrays.fill(start, 0, slopeIndex(), 1);
        if (bend != null) {
            start[slopeIndex() + 1] = 0;
        }
        return fit.line(start, slopeIndex());
    }

    /** What each test is above the line, in its own standard uncertainty. */
    double[] residuals() {
        double[] residuals = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            OutputPoint point = points.get(i);
            double height = fit.valueAt(parts(point.date(), errors.partsOf(point)));
            residuals[i] = (y[i] - height) / (scatter.s() * point.relativeU());
        }
        return residuals;
    }

    double[] times() {
        return t.clone();
    }

    /** ln q of each test with steps and changing errors taken out. */
    double[] levelled() {
        double[] levelled = y.clone();
        for (int i = 0; i < y.length; i++) {
            double[] parts = parts(points.get(i).date(), errors.partsOf(points.get(i)));
            parts[0] = 0;
            parts[slopeIndex()] = 0;
            levelled[i] -= fit.valueAt(parts);
        }
        return levelled;
    }
}
