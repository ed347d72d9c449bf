package plantair.supply;

import java.util.Optional;
import plantair.pumpup.FreeAir;
import plantair.pumpup.Intake;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;

/**
 * Free air that one item takes at a site, from its plate, from the table of blast nozzles or from its bore (S10). Figures of
 * plates and tables are taken as stated at sea level and carried to the site by S13; a standard flow becomes free air by M11
 * backwards. The air of an intake is taken as 20 °C and 50 % humid where nobody measured it.
 *
 * <p>Checked by: ItemAirTests.
 */
public final class ItemAir {

    /** Relative standard uncertainty of a figure from a plate or catalog; our own judgement, no source. */
    public static final double PLATE_U = 0.10;

    /** Of the table of blast nozzles, which is one of a single trade; our own judgement, no source. */
    public static final double TABLE_U = 0.05;

    /** Of a hole whose bore and edge are known; the two coefficients printed for a sharp edge lie 6 % apart. */
    public static final double HOLE_U = 0.05;

    private static final AbsolutePressure SEA_LEVEL = new AbsolutePressure(101_325);
    private static final Temperature USUAL = Temperature.of(20, TemperatureUnit.CELSIUS);
    private static final RelativeHumidity USUAL_HUMIDITY = new RelativeHumidity(0.5);

    private ItemAir() {}

    /**
     * From a figure that is stated for this very place.
     *
     * @param flow zero or more
     * @param basis what it refers to; one that is not stated is taken as free air
     * @param station barometric pressure of the place
     * @throws IllegalArgumentException for a displacement, which no item takes
     */
    public static FlowRate here(FlowRate flow, FlowBasis basis, AbsolutePressure station) {
        if (basis == FlowBasis.DISPLACEMENT) {
            throw new IllegalArgumentException("no item takes a displacement");
        }
        if (basis.state().isEmpty()) {
            return flow;
        }
        var intake = new Intake(station, USUAL, USUAL_HUMIDITY);
        return flow.times(1 / FreeAir.standard(new FlowRate(1), intake, basis).cubicMetresPerSecond());
    }

    /**
     * From a figure that is stated at sea level.
     *
     * @param pressure at the item, above zero
     * @see #here(FlowRate, FlowBasis, AbsolutePressure)
     */
    public static FlowRate fromSeaLevel(
            FlowRate flow, FlowBasis basis, GaugePressure pressure, AbsolutePressure station) {
        return here(flow, basis, SEA_LEVEL).times(ToolAltitude.factor(pressure, station));
    }

    /**
     * Of a blast nozzle.
     *
     * @return empty where the table ends
     */
    public static Optional<FlowRate> blasting(BlastNozzle nozzle, GaugePressure pressure, AbsolutePressure station) {
        return nozzle.flow(pressure).map(flow -> flow.times(ToolAltitude.factor(pressure, station)));
    }

    /**
     * Through a hole (S11), the air before it as warm as the intake.
     *
     * @param coefficient of discharge, above 0, at most 1
     * @return empty where the flow is not choked
     */
    public static Optional<FlowRate> throughHole(
            Length bore, double coefficient, GaugePressure pressure, AbsolutePressure station) {
        return ChokedNozzle.isChoked(pressure, station)
                ? Optional.of(ChokedNozzle.freeAir(bore, coefficient, pressure, USUAL, station, USUAL))
                : Optional.empty();
    }

    /**
     * Share of the time in which an event runs, for S10.
     *
     * @param length of one, above zero
     * @param every from the start of one to the start of the next, no shorter
     * @throws IllegalArgumentException when outside the ranges
     */
    public static double share(Elapsed length, Elapsed every) {
        if (!(length.seconds() > 0 && length.seconds() <= every.seconds())) {
            throw new IllegalArgumentException("no event: " + length + " every " + every);
        }
        return length.seconds() / every.seconds();
    }
}
