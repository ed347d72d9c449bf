package plantair.testrecord;

import java.util.List;
import plantair.pumpup.Figure;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.FreeAirVolume;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.Power;
import plantair.quantity.PressureDifference;
import plantair.quantity.Rounded;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VesselVolume;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/**
 * The text of a figure in a person's units.
 *
 * @param units the person's units
 * @param format how many digits: as a reader needs, or as a hand calculator needs
 */
public record FigureText(UnitSet units, QuantityFormat format) {

    private static final int CONTENT_DIGITS = 8;
    private static final int RATIO_DIGITS = 6;
    private static final int BAROMETER_DIGITS = 4;

    /** Every figure, as arguments of a message. */
    public Object[] all(List<Figure> figures) {
        return figures.stream().map(this::of).toArray();
    }

    /** One figure. */
    public String of(Figure figure) {
        double si = figure.si();
        return switch (figure.kind()) {
            case GAUGE_PRESSURE -> format.gauge(new GaugePressure(si));
            case ABSOLUTE_PRESSURE -> barometer(new AbsolutePressure(si));
            case PRESSURE_DIFFERENCE -> format.difference(new PressureDifference(si));
            case VESSEL_VOLUME -> format.vessel(new VesselVolume(si));
            case FREE_AIR_VOLUME -> format.freeAir(new FreeAirVolume(si));
            case FLOW -> format.flow(new FlowRate(si));
            case TEMPERATURE -> format.temperature(new Temperature(si));
            case TEMPERATURE_DIFFERENCE -> format.kelvins(si);
            case ELAPSED -> format.elapsed(new Elapsed(si));
            case ELEVATION -> format.elevation(new Length(si));
            case SPEED -> Rounded.significant(si, RATIO_DIGITS) + " rpm";
            case CONTENT -> content(si);
            case POWER -> format.power(new Power(si));
            case RATE -> Rounded.significant(si, RATIO_DIGITS) + " 1/s";
            case RATIO -> Rounded.significant(si, RATIO_DIGITS);
            case PERCENT -> format.percent(si);
            case COUNT -> Rounded.places(si, 0);
        };
    }

    /** As in the working: temperatures in kelvin, volumes and times in the units of the flow. */
    public String working(Figure figure) {
        return switch (figure.kind()) {
            case TEMPERATURE ->
                Rounded.significant(new Temperature(figure.si()).in(TemperatureUnit.KELVIN), RATIO_DIGITS) + " K";
            case VESSEL_VOLUME -> format.workingVessel(new VesselVolume(figure.si()));
            case ELAPSED -> format.workingTime(new Elapsed(figure.si()));
            case ABSOLUTE_PRESSURE -> format.absolute(new AbsolutePressure(figure.si()));
            default -> of(figure);
        };
    }

    /** Outside the working every absolute pressure is a barometer's. */
    private String barometer(AbsolutePressure pressure) {
        return Rounded.significant(pressure.in(units.barometer()), BAROMETER_DIGITS) + " "
                + units.barometer().symbol();
    }

    /** D/(Z T): a pressure for each kelvin. */
    private String content(double pascalsPerKelvin) {
        double inUnit = new PressureDifference(pascalsPerKelvin).in(units.pressure());
        return Rounded.significant(inUnit, CONTENT_DIGITS) + " "
                + units.pressure().symbol() + "/K";
    }
}
