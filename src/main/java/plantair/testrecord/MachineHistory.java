package plantair.testrecord;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.trend.Baseline;
import plantair.trend.BaselineComparison;
import plantair.trend.Crossing;
import plantair.trend.Limits;
import plantair.trend.NewResult;
import plantair.trend.OutputPoint;
import plantair.trend.OutputTrend;
import plantair.trend.ReferencePressure;
import plantair.trend.Standing;

/** The current tests of one compressor beside its baseline and what was done to it. */
public final class MachineHistory {

    private final List<ResultLine> tests;
    private final List<MachineEvent> events;
    private final List<ResultLine> baselines;
    private final @Nullable TestPoints points;
    private final OutputTrend trend;

    /**
     * A history.
     *
     * @param tests oldest first, superseded ones left out
     * @param events what was done, oldest first
     * @param chosen ids of the tests chosen as baseline, in the order of choosing
     */
    public MachineHistory(List<ResultLine> tests, List<MachineEvent> events, List<Long> chosen) {
        this.tests = List.copyOf(tests);
        this.events = List.copyOf(events);
        this.baselines = baselines(chosen);
        this.points = baselines.isEmpty() ? null : new TestPoints(current(), this.events);
        this.trend = trendOf(this.tests);
    }

    private List<ResultLine> baselines(List<Long> chosen) {
        List<ResultLine> found = new ArrayList<>();
        tests.stream().filter(MachineHistory::counts).findFirst().ifPresent(found::add);
        for (Long id : chosen) {
            tests.stream()
                    .filter(test -> test.testId() == id && counts(test))
                    .findFirst()
                    .ifPresent(found::add);
        }
        return found;
    }

    private ResultLine current() {
        return baselines.get(baselines.size() - 1);
    }

    /** Whether a test joins the trend, so that it may be a baseline. */
    public static boolean counts(ResultLine test) {
        return test.joinsTrend() && test.comparable().isPresent();
    }

    private OutputTrend trendOf(List<ResultLine> some) {
        return OutputTrend.of(
                some.stream().flatMap(test -> point(test).stream()).toList(),
                events.stream()
                        .filter(MachineEvent::mayStep)
                        .map(MachineEvent::date)
                        .toList());
    }

    /** All current tests, oldest first. */
    public List<ResultLine> tests() {
        return tests;
    }

    /** What was done, oldest first. */
    public List<MachineEvent> events() {
        return events;
    }

    /** The newest test. */
    public Optional<ResultLine> last() {
        return tests.isEmpty() ? Optional.empty() : Optional.of(tests.get(tests.size() - 1));
    }

    /** The baseline in force: the test chosen last, or else the first that joins the trend. */
    public Optional<ResultLine> baseline() {
        return baselines.isEmpty() ? Optional.empty() : Optional.of(current());
    }

    public boolean isBaseline(ResultLine test) {
        return baselines.contains(test);
    }

    /** Whether a test was made at another pressure than the baseline, too far off to be compared. */
    public boolean isOtherPressure(ResultLine test) {
        return counts(test)
                && baseline()
                        .filter(baseline -> !ReferencePressure.isNear(
                                test.marks().midPressure(), baseline.marks().midPressure()))
                        .isPresent();
    }

    /** The test as a point of the trend, at the pressure of the baseline; empty when it does not join. */
    public Optional<OutputPoint> point(ResultLine test) {
        return points == null || !counts(test) || isOtherPressure(test)
                ? Optional.empty()
                : Optional.of(points.of(test));
    }

    /**
     * A test against the baseline that counts for it; empty for a baseline itself and for a test that does not join the
     * trend.
     */
    public Optional<BaselineComparison> ofBaseline(ResultLine test) {
        return isBaseline(test)
                ? Optional.empty()
                : point(test)
                        .flatMap(point -> baselineOf(test)
                                .flatMap(this::point)
                                .map(baseline -> Baseline.compare(point, baseline)));
    }

    /** The newest choice that is not later than the test; the first baseline for a test before all of them. */
    private Optional<ResultLine> baselineOf(ResultLine test) {
        for (int i = baselines.size() - 1; i > 0; i--) {
            if (!baselines.get(i).performedAt().isAfter(test.performedAt())) {
                return Optional.of(baselines.get(i));
            }
        }
        return baselines.stream().findFirst();
    }

    /** The trend through the tests that join it. */
    public OutputTrend trend() {
        return trend;
    }

    /** The flow at a part of the baseline; empty without a baseline. */
    public Optional<FlowRate> partOfBaseline(int percent) {
        return baseline().flatMap(this::point).map(point -> point.flow().times(percent / 100.0));
    }

    /** When the trend reaches a part of the baseline; empty without a line, or when it does not fall. */
    public Optional<Crossing> crossing(int percent) {
        return partOfBaseline(percent).flatMap(limit -> trend.crossing(limit, 0));
    }

    /** Whether no test that joins the trend was made on the day of an event or later. */
    public boolean isUntestedSince(LocalDate event) {
        return tests.stream()
                .noneMatch(test -> point(test).isPresent() && !test.date().isBefore(event));
    }

    /** How a test fits those before it; empty when it does not join the trend or none came before. */
    public Optional<NewResult> judge(ResultLine test) {
        int index = tests.indexOf(test);
        return point(test).flatMap(point -> trendOf(tests.subList(0, index)).judge(point));
    }

    /** Where the compressor stands against its limits. */
    public Standing standing(Limits limits) {
        List<BaselineComparison> since = new ArrayList<>();
        baseline()
                .ifPresent(baseline -> tests.stream()
                        .filter(test -> !test.performedAt().isBefore(baseline.performedAt()))
                        .flatMap(test -> ofBaseline(test).stream())
                        .forEach(since::add));
        Collections.reverse(since);
        return Standing.of(
                limits, since, trend.code().isDecline() ? lineOfBaseline().orElse(null) : null);
    }

    /** The line at the last test against the baseline; empty without a line. */
    public Optional<BaselineComparison> lineOfBaseline() {
        return baseline()
                .flatMap(this::point)
                .flatMap(baseline ->
                        last().flatMap(last -> trend.at(last.date())).map(level -> Baseline.compare(level, baseline)));
    }
}
