package plantair.pumpup;

import java.util.List;
import plantair.statistics.Repeats;
import plantair.statistics.RunDrift;

/**
 * Whether the runs of one test agree (M19).
 *
 * @param mean mean free air delivered, m³/s
 * @param relativeScatter standard deviation over mean; 0 for a single run
 * @param spread highest less lowest over mean
 * @param drift slope over the runs divided by its standard uncertainty; 0 for fewer than three runs, and where they do
 *     not rise or fall steadily
 * @param delivered true when every run delivered air
 */
record RunAgreement(double mean, double relativeScatter, double spread, double drift, boolean delivered) {

    /** Beyond this many standard uncertainties a steady rise or fall is no chance: about one good test in twenty. */
    private static final double DRIFT_LIMIT = 2;

    private static final double STEADY_PART = 0.6;

    /** @param runU relative standard uncertainty of one run against its neighbours, above zero */
    static RunAgreement of(List<RunResult> runs, double runU) {
        double[] flows = runs.stream()
                .mapToDouble(run -> run.freeAir().cubicMetresPerSecond())
                .toArray();
        boolean delivered = runs.stream().allMatch(run -> run.freeAir().cubicMetresPerSecond() > 0);
        if (!delivered) {
            return new RunAgreement(0, 0, 0, 0, false);
        }
        double drift = flows.length < 3 || !isSteady(flows) ? 0 : RunDrift.score(flows, runU);
        Repeats repeats = Repeats.of(flows);
        return new RunAgreement(
                repeats.mean(), repeats.standardDeviation() / repeats.mean(), repeats.relativeSpread(), drift, true);
    }

    /** True when nearly all pairs of runs stand in one order: all of three, five of six of four, and so on. */
    private static boolean isSteady(double[] flows) {
        double balance = 0;
        for (int later = 1; later < flows.length; later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                balance += Math.signum(flows[later] - flows[earlier]);
            }
        }
        int pairs = flows.length * (flows.length - 1) / 2;
        return Math.abs(balance) >= STEADY_PART * pairs;
    }

    boolean drifts() {
        return Math.abs(drift) > DRIFT_LIMIT;
    }

    boolean averaged() {
        return delivered && !drifts();
    }
}
