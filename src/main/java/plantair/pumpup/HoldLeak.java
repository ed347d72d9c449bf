package plantair.pumpup;

import java.util.Optional;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.VesselVolume;

/**
 * Leak of the test volume, from the static hold (M10): k = ln(P1/P2)/t, q_leak = k V P/Pa · Ta/T, at absolute pressure P
 * and receiver temperature T. A leak through the machine's own check valve is never added: it acts only while the machine
 * stands.
 *
 * <p>Valid while the hole is choked, above about 0.9 bar gauge, and the air has settled. Source: isothermal outflow through
 * a choked hole; docs/method.md. Checked by: HoldLeakTests.
 *
 * @param perSecond k, 1/s; below zero when the pressure rose
 * @param atHold leak at the mean pressure of the hold, as free air at the intake
 * @param inRuns leak at the mean pressure of the band, as free air at the intake
 * @param added true when it is added to the delivered flow
 */
public record HoldLeak(double perSecond, FlowRate atHold, FlowRate inRuns, boolean added) {

    static Optional<HoldLeak> of(PumpUpReadings readings, GaugePressure midOfBand) {
        StaticHold hold = readings.circumstances().hold();
        if (hold == null) {
            return Optional.empty();
        }
        AbsolutePressure station = readings.station().pressure();
        double from = hold.start().above(station).pascals();
        double to = hold.end().above(station).pascals();
        double k = perSecond(hold, station);
        boolean added = k > 0 && hold.place() == StaticHold.Place.TEST_VOLUME;
        return Optional.of(new HoldLeak(
                k,
                leak(readings, k, (from + to) / 2),
                leak(readings, k, midOfBand.above(station).pascals()),
                added));
    }

    /** k of M10: above zero when the pressure fell. */
    static double perSecond(StaticHold hold, AbsolutePressure station) {
        double from = hold.start().above(station).pascals();
        double to = hold.end().above(station).pascals();
        return StrictMath.log(from / to) / hold.waited().seconds();
    }

    private static FlowRate leak(PumpUpReadings readings, double k, double pascals) {
        VesselVolume volume = readings.netVolume();
        RunReadings run = readings.runs().get(0);
        double intakeK = readings.intakeTemperature().kelvin();
        double airK = run.startAir() == null ? intakeK : run.startAir().kelvin();
        return new FlowRate(k
                * volume.cubicMetres()
                * pascals
                / readings.station().pressure().pascals()
                * intakeK
                / airK);
    }
}
