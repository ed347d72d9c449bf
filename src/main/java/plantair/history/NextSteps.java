package plantair.history;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Finding;
import plantair.pumpup.FindingCode;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.Severity;
import plantair.testrecord.MachineEvent;
import plantair.testrecord.MachineHistory;
import plantair.trend.Crossing;
import plantair.trend.Limits;
import plantair.trend.Standing;
import plantair.trend.TrendCode;

/**
 * The one next step of a machine: safety first, then what makes the next figure worth something, then what the figures say.
 * Money is not to be spent on the word of a gauge past its date, so that comes before every limit.
 */
final class NextSteps {

    private static final int MONTHS_BETWEEN_TESTS = 3;

    private static final Set<FindingCode> TOO_MUCH_AIR =
            EnumSet.of(FindingCode.TOO_GOOD, FindingCode.IMPOSSIBLE_POWER, FindingCode.IMPOSSIBLE_DISPLACEMENT);
    private static final Set<FindingCode> NOT_TIGHT = EnumSet.of(FindingCode.LEAK_ADDED, FindingCode.HOLD_ROSE);

    private NextSteps() {}

    /**
     * A step.
     *
     * @param step what to do
     * @param day what the step says of it; null where it has none
     */
    record Chosen(NextStep step, @Nullable LocalDate day) {

        private Chosen(NextStep step) {
            this(step, null);
        }
    }

    /**
     * The step after a test.
     *
     * @param history with at least one test
     * @param last result of its last test
     * @param gauge state of the gauge of that test
     */
    static Chosen of(MachineHistory history, PumpUpResult last, GaugeState gauge, Standing standing, Limits limits) {
        return afterHazardOrWork(history, last)
                .or(() -> afterTestThatShowsNothing(last))
                .or(() -> beforeFiguresCount(history, gauge))
                .orElseGet(() -> byFigures(history, standing, limits));
    }

    private static Optional<Chosen> afterHazardOrWork(MachineHistory history, PumpUpResult last) {
        if (last.findings().stream().anyMatch(finding -> finding.code().severity() == Severity.HAZARD)) {
            return Optional.of(new Chosen(NextStep.MAKE_SAFE));
        }
        LocalDate tested = history.last().orElseThrow().date();
        return history.events().stream()
                .filter(event -> event.mayStep() || event.gaugeChanged())
                .map(MachineEvent::date)
                .filter(day -> day.isAfter(tested))
                .max(Comparator.naturalOrder())
                .map(day -> new Chosen(NextStep.TEST_AFTER_EVENT, day));
    }

    private static Optional<Chosen> afterTestThatShowsNothing(PumpUpResult last) {
        List<FindingCode> codes = last.findings().stream().map(Finding::code).toList();
        if (codes.stream().anyMatch(TOO_MUCH_AIR::contains)) {
            return Optional.of(new Chosen(NextStep.DRAIN_AND_REPEAT));
        }
        if (codes.stream().anyMatch(NOT_TIGHT::contains)) {
            return Optional.of(new Chosen(NextStep.FIX_LEAK));
        }
        return last.joinsTrend() ? Optional.empty() : Optional.of(new Chosen(NextStep.REPEAT));
    }

    private static Optional<Chosen> beforeFiguresCount(MachineHistory history, GaugeState gauge) {
        if (gauge == GaugeState.PAST_ITS_DATE) {
            return Optional.of(new Chosen(NextStep.CHECK_GAUGE));
        }
        return history.trend().code() == TrendCode.READS_HIGHER
                ? Optional.of(new Chosen(NextStep.DRAIN_AND_REPEAT))
                : Optional.empty();
    }

    private static Chosen byFigures(MachineHistory history, Standing standing, Limits limits) {
        return switch (standing) {
            case ACT -> new Chosen(NextStep.ACT_NOW);
            case WATCH, PLAN -> foretold(history, limits).orElse(new Chosen(NextStep.CHECK_CHEAPEST_FIRST));
            case REPEAT -> new Chosen(NextStep.REPEAT);
            case CANNOT_BE_TOLD -> new Chosen(NextStep.MEASURE_BETTER);
            case OK, NOT_KNOWN ->
                new Chosen(NextStep.NONE, history.last().orElseThrow().date().plusMonths(MONTHS_BETWEEN_TESTS));
        };
    }

    /** Only the strong word foretells: a few tests that fall ask for the cheapest checks, not for a rebuild. */
    private static Optional<Chosen> foretold(MachineHistory history, Limits limits) {
        return history.trend().code() != TrendCode.DECLINING
                ? Optional.empty()
                : history.crossing(limits.actBelow())
                        .filter(crossing -> crossing.code() != Crossing.Code.LATER_THAN)
                        .flatMap(crossing -> Optional.ofNullable(crossing.earliest()))
                        .map(day -> new Chosen(NextStep.PLAN_REBUILD, day));
    }
}
