package plantair.supply;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Temperature;

/**
 * Free air through an open hole or nozzle (S11): m = Cd A P0 √(κ/(R T0)) (2/(κ + 1))^((κ + 1)/(2(κ − 1))), and q = m R Ta/Pa.
 * Dry air, κ = 1.4, R = 287.055 J/(kg K). The flow is in proportion to the square of the bore and to the absolute pressure.
 *
 * <p>Valid while the flow is choked: P0 above 1.893 Pa. Source: gas dynamics, any text. Checked by: ChokedNozzleReferenceTests
 * (orifice table of a trade handbook).
 */
public final class ChokedNozzle {

    /** A well-rounded nozzle; orifice tables of the trade, read in a copy. */
    public static final double ROUNDED = 0.97;

    /** A sharp-edged hole. Tables of the trade print 0.65, the tip sheet of the US Department of Energy 0.61. */
    public static final double SHARP = 0.61;

    private static final double GAS_CONSTANT = 287.055;
    private static final double KAPPA = 1.4;
    private static final double CHOKED_RATIO = StrictMath.pow((KAPPA + 1) / 2, KAPPA / (KAPPA - 1));
    private static final double CONSTANT = StrictMath.pow(2 / (KAPPA + 1), (KAPPA + 1) / (2 * (KAPPA - 1)));

    private ChokedNozzle() {}

    /** Whether the flow through a hole is choked, so that its free air can be told. */
    public static boolean isChoked(GaugePressure pressure, AbsolutePressure station) {
        return pressure.above(station).pascals() >= CHOKED_RATIO * station.pascals();
    }

    /**
     * What holes let through at another pressure, in proportion to the absolute pressure before them; for leaks.
     *
     * @param flow at the pressure {@code from}
     * @param station barometric pressure of the place
     */
    public static MeasuredFlow carried(
            MeasuredFlow flow, GaugePressure from, GaugePressure to, AbsolutePressure station) {
        double factor = to.above(station).pascals() / from.above(station).pascals();
        return new MeasuredFlow(
                flow.flow().times(factor), flow.standardUncertainty().times(factor), flow.basis());
    }

    /**
     * What a hole lets through.
     *
     * @param bore above zero
     * @param coefficient of discharge, above 0, at most 1
     * @param pressure before the hole
     * @param air temperature before the hole
     * @param station barometric pressure of the place
     * @param intake temperature at which the free air is told
     * @return free air at the intake
     * @throws IllegalArgumentException when outside the ranges, or when the flow is not choked
     */
    public static FlowRate freeAir(
            Length bore,
            double coefficient,
            GaugePressure pressure,
            Temperature air,
            AbsolutePressure station,
            Temperature intake) {
        if (!(bore.metres() > 0 && coefficient > 0 && coefficient <= 1)) {
            throw new IllegalArgumentException("no hole: " + bore + ", coefficient " + coefficient);
        }
        double before = pressure.above(station).pascals();
        if (!isChoked(pressure, station)) {
            throw new IllegalArgumentException("flow is not choked at " + pressure);
        }
        double area = Math.PI / 4 * bore.metres() * bore.metres();
        double perPressure = StrictMath.sqrt(KAPPA * GAS_CONSTANT / air.kelvin()) * CONSTANT;
        return new FlowRate(coefficient * area * before / station.pascals() * perPressure * intake.kelvin());
    }
}
