package plantair.history;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Finding;
import plantair.pumpup.FindingCode;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.Severity;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;
import plantair.trend.Baseline;
import plantair.trend.BaselineComparison;
import plantair.trend.Limits;
import plantair.trend.Standing;
import plantair.trend.TrendCode;

/**
 * What a history comes to, against the limits of the plant. Reads no clock: the same history gives the same judgement.
 *
 * @param standing against the limits
 * @param trend what the tests say of the direction
 * @param compared the last test that joins the trend; null when none does
 * @param part that test as a part of its baseline; empty where there is no comparison
 * @param next step
 * @param rank worst lowest
 */
record Judgement(
        Standing standing,
        TrendCode trend,
        @Nullable ResultLine compared,
        Optional<BaselineComparison> part,
        NextSteps.Chosen next,
        int rank) {

    /** Standings in the order of the overview, after hazard and stop; those that are not listed come after them. */
    private static final List<Standing> WORST_FIRST =
            List.of(Standing.ACT, Standing.PLAN, Standing.WATCH, Standing.REPEAT, Standing.CANNOT_BE_TOLD);

    private static final int MOST_DOTS = 12;

    /**
     * A judgement.
     *
     * @param history with at least one test
     * @param last result of its last test
     * @param gauge state of the gauge of that test
     */
    static Judgement of(MachineHistory history, PumpUpResult last, GaugeState gauge, Limits limits) {
        Standing standing = history.standing(limits);
        Optional<ResultLine> compared = history.tests().stream()
                .filter(test -> history.point(test).isPresent())
                .reduce((earlier, later) -> later);
        return new Judgement(
                standing,
                history.trend().code(),
                compared.orElse(null),
                compared.flatMap(history::ofBaseline),
                NextSteps.of(history, last, gauge, standing, limits),
                rank(history.last().orElseThrow().severity(), standing));
    }

    private static int rank(@Nullable Severity worst, Standing standing) {
        if (worst == Severity.HAZARD) {
            return 0;
        }
        if (worst == Severity.STOP) {
            return 1;
        }
        int place = WORST_FIRST.indexOf(standing);
        return 2 + (place < 0 ? WORST_FIRST.size() : place);
    }

    StateDetail detail(MachineHistory history, PumpUpResult last) {
        var freeAir = last.freeAir();
        List<FindingCode> codes = last.findings().stream().map(Finding::code).toList();
        List<StateDetail.Dot> dots = history.tests().stream()
                .flatMap(test -> dot(history, test).stream())
                .toList();
        return new StateDetail(
                history.last().orElseThrow().zone(),
                freeAir == null ? null : freeAir.cubicMetresPerSecond(),
                last.uncertainty().combined(),
                last.midPressure().pascals(),
                codes.stream().findFirst().orElse(null),
                codes.stream().filter(FindingCode::isKeptFromTrend).findFirst().orElse(null),
                compared == null ? null : compared.testId(),
                compared == null ? null : compared.date(),
                compared != null && history.isBaseline(compared),
                dots.subList(Math.max(0, dots.size() - MOST_DOTS), dots.size()));
    }

    private static Optional<StateDetail.Dot> dot(MachineHistory history, ResultLine test) {
        Optional<Double> part = history.isBaseline(test)
                ? Optional.of(1.0)
                : history.ofBaseline(test)
                        .map(BaselineComparison::ratio)
                        .or(() -> test.comparable()
                                .flatMap(flow -> history.baseline()
                                        .flatMap(ResultLine::comparable)
                                        .map(baseline -> Baseline.ratio(flow, baseline))));
        return part.map(ratio ->
                new StateDetail.Dot(test.date(), ratio, history.point(test).isPresent()));
    }
}
