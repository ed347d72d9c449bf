package plantair.web;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.FreeAirVolume;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Power;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * The text of quantities in a person's units. Methods named after a quantity give number and unit; those that end in
 * {@code Number} the number only, for a table whose header has the unit.
 */
public final class QuantityFormat {

    private static final int WORKING_DIGITS = 6;
    private static final double WHOLE = 100;
    private static final double TEN = 10;

    private final UnitSet units;
    private final boolean working;

    private QuantityFormat(UnitSet units, boolean working) {
        this.units = units;
        this.working = working;
    }

    /** For results and registers: as many digits as a reader needs. */
    public static QuantityFormat of(UnitSet units) {
        return new QuantityFormat(units, false);
    }

    /** For the working of a test: six significant digits, so that a hand calculator can follow. */
    public static QuantityFormat working(UnitSet units) {
        return new QuantityFormat(units, true);
    }

    /** Sign of gauge pressure: psig, bar(g). */
    public String gaugeUnit() {
        return sign("g");
    }

    /** Sign of absolute pressure: psia, bar(a). */
    public String absoluteUnit() {
        return sign("a");
    }

    private String sign(String kind) {
        String symbol = units.pressure().symbol();
        return units.pressure() == PressureUnit.PSI ? symbol + kind : symbol + "(" + kind + ")";
    }

    public String gauge(GaugePressure pressure) {
        return gaugeNumber(pressure) + " " + gaugeUnit();
    }

    public String gaugeNumber(GaugePressure pressure) {
        return places(pressure.in(units.pressure()), gaugePlaces());
    }

    public String absolute(AbsolutePressure pressure) {
        return absoluteNumber(pressure) + " " + absoluteUnit();
    }

    public String absoluteNumber(AbsolutePressure pressure) {
        return places(pressure.in(units.pressure()), gaugePlaces() + 1);
    }

    public String difference(PressureDifference difference) {
        return places(difference.in(units.pressure()), gaugePlaces()) + " "
                + units.pressure().symbol();
    }

    private int gaugePlaces() {
        return switch (units.pressure()) {
            case KPA -> 0;
            case PSI -> 1;
            default -> 2;
        };
    }

    public String flowUnit() {
        return units.flow().symbol();
    }

    /** A flow without a known uncertainty, such as a nameplate's. */
    public String flow(FlowRate flow) {
        return flowNumber(flow) + " " + flowUnit();
    }

    public String flowNumber(FlowRate flow) {
        return significant(flow.in(units.flow()));
    }

    /** A flow with its uncertainty, 34.4 ± 1.0 cfm. What kind of uncertainty it is, the page says. */
    public String flow(FlowRate flow, double relativeU) {
        return flowNumber(flow, relativeU) + " ± " + flowUncertainty(flow, relativeU) + " " + flowUnit();
    }

    /** A flow no sharper than its uncertainty. */
    public String flowNumber(FlowRate flow, double relativeU) {
        return sharp(flow.in(units.flow()), part(flow, relativeU));
    }

    /** The uncertainty in the unit of the flow, two significant digits. */
    public String flowUncertainty(FlowRate flow, double relativeU) {
        double u = part(flow, relativeU);
        return sharp(u, u);
    }

    private double part(FlowRate flow, double relativeU) {
        return Math.abs(flow.times(relativeU).in(units.flow()));
    }

    public String temperature(Temperature temperature) {
        return places(temperature.in(units.temperature()), 1) + " "
                + units.temperature().symbol();
    }

    /** A difference of temperatures. */
    public String kelvins(double kelvins) {
        return places(kelvins, 1) + " K";
    }

    public String vessel(VesselVolume volume) {
        return significant(volume.in(units.vessel())) + " " + units.vessel().symbol();
    }

    /** A vessel's volume in the unit of the working. */
    public String workingVessel(VesselVolume volume) {
        return significant(volume.in(units.workingVolume())) + " "
                + units.workingVolume().symbol();
    }

    public String freeAir(FreeAirVolume volume) {
        return significant(volume.in(units.workingVolume())) + " "
                + units.workingVolume().symbol();
    }

    /** Elapsed time in seconds, as a stopwatch shows it. */
    public String elapsed(Elapsed elapsed) {
        return places(elapsed.in(DurationUnit.SECOND), 1) + " s";
    }

    /** A longer time with its uncertainty, in seconds up to two minutes, else in minutes. */
    public String duration(Elapsed elapsed, double relativeU) {
        var unit = elapsed.in(DurationUnit.MINUTE) < 2 ? DurationUnit.SECOND : DurationUnit.MINUTE;
        double value = elapsed.in(unit);
        double u = value * relativeU;
        String text = u > 0
                ? Rounded.toUncertainty(value, u) + " ± " + Rounded.toUncertainty(u, u)
                : Rounded.significant(value, 3);
        return text + " " + unit.symbol();
    }

    /** A vessel's volume with its uncertainty. */
    public String vessel(VesselVolume volume, double relativeU) {
        double value = volume.in(units.vessel());
        return relativeU > 0
                ? amount(value, value * relativeU) + " " + units.vessel().symbol()
                : vessel(volume);
    }

    /** Elapsed time in the unit of the working. */
    public String workingTime(Elapsed elapsed) {
        return significant(elapsed.in(units.workingTime())) + " "
                + units.workingTime().symbol();
    }

    public String elevation(Length height) {
        return places(height.in(units.elevation()), 0) + " " + units.elevation().symbol();
    }

    public String bore(Length bore) {
        return places(bore.in(units.bore()), units.bore() == LengthUnit.INCH ? 2 : 0) + " "
                + units.bore().symbol();
    }

    public String power(Power power) {
        return places(power.in(units.power()), 1) + " " + units.power().symbol();
    }

    /** A ratio as a percentage: 0.934 is 93.4 %. */
    public String percent(double ratio) {
        return places(100 * ratio, 1) + " %";
    }

    /** A ratio with its uncertainty as a percentage: 93.4 ± 2.8 %. */
    public String percent(double ratio, double uRatio) {
        double u = 100 * uRatio;
        return sharp(100 * ratio, u) + " ± " + sharp(u, u) + " %";
    }

    /**
     * An amount of a year, money or energy, no sharper than its uncertainty, which has two digits, before the dot too: 18000 ±
     * 2400. A hundred and more has no decimals.
     *
     * @param u standard uncertainty; zero where none is known
     */
    public static String amount(double value, double u) {
        if (!(u > 0)) {
            return Math.abs(value) >= WHOLE ? Rounded.places(value, 0) : Rounded.significant(value, 2);
        }
        int digits = 2 + Math.max(0, magnitude(value) - magnitude(u));
        if (Math.abs(value) < WHOLE) {
            return Rounded.significant(value, digits) + " ± " + Rounded.significant(u, 2);
        }
        String rounded = Rounded.significant(value, Math.min(digits, magnitude(value) + 1));
        return rounded + " ± " + (u < TEN ? Rounded.places(Math.ceil(u), 0) : Rounded.significant(u, 2));
    }

    private static int magnitude(double value) {
        return value == 0 ? 0 : (int) Math.floor(Math.log10(Math.abs(value)));
    }

    private String places(double value, int places) {
        return working ? Rounded.significant(value, WORKING_DIGITS) : Rounded.places(value, places);
    }

    private String significant(double value) {
        return Rounded.significant(value, working ? WORKING_DIGITS : 4);
    }

    private String sharp(double value, double u) {
        return u > 0 ? Rounded.toUncertainty(value, u) : significant(value);
    }
}
