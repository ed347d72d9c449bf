package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.VesselVolume;

/**
 * Whether a static hold is good enough to start the runs: its leak by M10, with the receiver as warm as the intake, beside
 * what the machine usually delivers. The same limit as that of the finding after the runs, where the leak is worked out
 * again with the temperatures. Source of the limit: own choice, docs/findings.md.
 *
 * @param leak free air lost at the mean pressure of the hold; below zero when the pressure rose
 * @param part leak over what the machine usually delivers
 * @param verdict what that means
 */
public record HoldCheck(FlowRate leak, double part, Verdict verdict) {

    /** What a hold says before the runs. */
    public enum Verdict {
        /** Small beside what the machine delivers. */
        PASSES,
        /** The pressure fell too fast: something in the test volume is open. */
        FALLS,
        /** The pressure rose: something feeds in. */
        RISES
    }

    /**
     * A hold before the runs.
     *
     * @param volume net volume that was shut
     * @param usual what the machine usually delivers, above zero
     */
    public static HoldCheck of(VesselVolume volume, AbsolutePressure station, StaticHold hold, FlowRate usual) {
        double mean = (hold.start().above(station).pascals()
                        + hold.end().above(station).pascals())
                / 2;
        double k = HoldLeak.perSecond(hold, station);
        var leak = new FlowRate(k * volume.cubicMetres() * mean / station.pascals());
        double part = leak.cubicMetresPerSecond() / usual.cubicMetresPerSecond();
        Verdict verdict = part > ResultFindings.HOLD_LIMIT
                ? Verdict.FALLS
                : part < -ResultFindings.HOLD_LIMIT ? Verdict.RISES : Verdict.PASSES;
        return new HoldCheck(leak, part, verdict);
    }
}
