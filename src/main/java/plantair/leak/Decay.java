package plantair.leak;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.VesselVolume;

/**
 * How fast a shut volume loses its air (S6): P = P0 e^(−kt), absolute pressures. While the holes are choked the loss is in
 * proportion to the absolute pressure, q = k V P/Pa as free air of the temperature of the volume.
 *
 * <p>Valid where P is above {@link #CHOKED_RATIO} times the station pressure, 0.90 bar gauge at sea level, and the air stands
 * at one temperature. Source: isothermal outflow through choked holes. Checked by: PressureFallReferenceTests.
 *
 * @param perSecond k, 1/s; below zero when the pressure rose
 * @param u its standard uncertainty, 1/s, zero or more
 */
public record Decay(double perSecond, double u) {

    /** Ratio of absolute pressures from which a hole is choked: ((κ + 1)/2)^(κ/(κ − 1)), κ = 1.4. */
    public static final double CHOKED_RATIO = StrictMath.pow(1.2, 3.5);

    /** Half a kelvin by which the air may have cooled unseen, of 293 K; our own default. */
    static final double COOLING = 0.5 / 293;

    private static final double TELLING = 2;

    /** k with its uncertainty and with that of half a kelvin of cooling over the time. */
    static Decay settled(double perSecond, double u, double seconds) {
        double cooling = COOLING / seconds;
        return new Decay(perSecond, StrictMath.sqrt(u * u + cooling * cooling));
    }

    /** Part of the air that leaks out in a minute. */
    public double perMinute() {
        return 60 * perSecond;
    }

    /** Standard uncertainty of that. */
    public double perMinuteU() {
        return 60 * u;
    }

    /** Whether the pressure fell by more than twice the uncertainty of its fall. */
    public boolean isTold() {
        return perSecond > TELLING * u;
    }

    /** Whether it rose by more than that: something feeds in. */
    public boolean isRise() {
        return perSecond < -TELLING * u;
    }

    /** Whether holes are choked at a pressure, so that S6 holds there. */
    public static boolean isChokedAt(GaugePressure pressure, AbsolutePressure station) {
        return pressure.pascals() + station.pascals() >= CHOKED_RATIO * station.pascals();
    }

    /**
     * The leak at a pressure.
     *
     * @param volume that was shut
     * @param relativeVolumeU relative standard uncertainty of it, zero or more
     * @param station barometric pressure of the place
     * @param at gauge pressure for which to tell the leak
     */
    public MeasuredFlow leak(VesselVolume volume, double relativeVolumeU, AbsolutePressure station, GaugePressure at) {
        double flow = flow(perSecond, volume, station, at);
        double byDecay = flow(u, volume, station, at);
        double byVolume = relativeVolumeU * flow;
        return new MeasuredFlow(
                new FlowRate(flow),
                new FlowRate(StrictMath.sqrt(byDecay * byDecay + byVolume * byVolume)),
                FlowBasis.INTAKE);
    }

    private static double flow(double k, VesselVolume volume, AbsolutePressure station, GaugePressure at) {
        return k * volume.cubicMetres() * at.above(station).pascals() / station.pascals();
    }
}
