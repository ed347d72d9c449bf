package plantair.trend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.statistics.RankTrend;

/** What else the tests say of the line: ranks (T8), single tests that carry it, neighbours that err alike. */
final class CrossCheck {

    private static final int FEWEST_FOR_RANKS = 5;
    private static final double NOT_SEEN_AT_ALL = 0.2;
    private static final int FEWEST_FOR_NEIGHBOURS = 12;

    private CrossCheck() {}

    static Optional<RankCheck> ranks(TrendLine line) {
        double[] t = line.times();
        if (t.length < FEWEST_FOR_RANKS) {
            return Optional.empty();
        }
        RankTrend ranks = RankTrend.of(t, line.levelled());
        double probability = ranks.probability();
        boolean agrees = line.direction(TrendLine.CONFIDENCE) == 0 || probability <= NOT_SEEN_AT_ALL;
        return ranks.slopeInterval(TrendLine.CONFIDENCE)
                .map(slope -> new RankCheck(
                        probability,
                        YearlyChange.percent(slope.middle()),
                        YearlyChange.percent(slope.low()),
                        YearlyChange.percent(slope.high()),
                        agrees));
    }

    /** The tests without any one of which no decline would be signalled. */
    static List<Long> carriers(List<OutputPoint> points, Steps steps) {
        List<Long> carriers = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            List<OutputPoint> others = new ArrayList<>(points);
            others.remove(i);
            TrendLine line = TrendLine.of(others, new Steps(others, steps.events()), new SharedErrors(others));
            if (line == null || line.direction(TrendLine.CONFIDENCE) >= 0) {
                carriers.add(points.get(i).test());
            }
        }
        return carriers;
    }

    /** Whether the residuals of neighbours go together: lag-one correlation above 2/√n, from twelve tests on. */
    static boolean neighboursAlike(TrendLine line) {
        double[] residuals = line.residuals();
        if (residuals.length < FEWEST_FOR_NEIGHBOURS) {
            return false;
        }
        double together = 0;
        double squares = residuals[0] * residuals[0];
        for (int i = 1; i < residuals.length; i++) {
            together += residuals[i] * residuals[i - 1];
            squares += residuals[i] * residuals[i];
        }
        return together > 2 / Math.sqrt(residuals.length) * squares;
    }
}
