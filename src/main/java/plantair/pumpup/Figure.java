package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.FreeAirVolume;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.Power;
import plantair.quantity.PressureDifference;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * A number in a working or a finding, with what it is a number of.
 *
 * @param symbol the symbol of docs/method.md, or a label
 * @param kind what it measures, which decides the unit it is shown in
 * @param si the number in SI
 */
public record Figure(String symbol, Kind kind, double si) {

    /** What a figure measures; the unit of {@code si} in brackets. */
    public enum Kind {
        /** Gauge pressure [Pa]. */
        GAUGE_PRESSURE,
        /** Absolute pressure [Pa]. */
        ABSOLUTE_PRESSURE,
        /** Pressure difference [Pa]. */
        PRESSURE_DIFFERENCE,
        /** Volume of a vessel [m³]. */
        VESSEL_VOLUME,
        /** Volume of free air [m³]. */
        FREE_AIR_VOLUME,
        /** Flow [m³/s]. */
        FLOW,
        /** Temperature [K]. */
        TEMPERATURE,
        /** Temperature difference [K]. */
        TEMPERATURE_DIFFERENCE,
        /** Time [s]. */
        ELAPSED,
        /** Elevation [m]. */
        ELEVATION,
        /** Shaft speed [1/min]. */
        SPEED,
        /** D/(Z T) [Pa/K]. */
        CONTENT,
        /** Power [W]. */
        POWER,
        /** A rate of decay [1/s]. */
        RATE,
        /** A bare ratio [1]. */
        RATIO,
        /** A ratio shown as a percentage [1]. */
        PERCENT,
        /** A count [1]. */
        COUNT
    }

    static Figure of(String symbol, GaugePressure quantity) {
        return new Figure(symbol, Kind.GAUGE_PRESSURE, quantity.pascals());
    }

    static Figure of(String symbol, AbsolutePressure quantity) {
        return new Figure(symbol, Kind.ABSOLUTE_PRESSURE, quantity.pascals());
    }

    static Figure of(String symbol, PressureDifference quantity) {
        return new Figure(symbol, Kind.PRESSURE_DIFFERENCE, quantity.pascals());
    }

    static Figure of(String symbol, VesselVolume quantity) {
        return new Figure(symbol, Kind.VESSEL_VOLUME, quantity.cubicMetres());
    }

    static Figure of(String symbol, FreeAirVolume quantity) {
        return new Figure(symbol, Kind.FREE_AIR_VOLUME, quantity.cubicMetres());
    }

    static Figure of(String symbol, FlowRate quantity) {
        return new Figure(symbol, Kind.FLOW, quantity.cubicMetresPerSecond());
    }

    static Figure of(String symbol, Temperature quantity) {
        return new Figure(symbol, Kind.TEMPERATURE, quantity.kelvin());
    }

    static Figure of(String symbol, Elapsed quantity) {
        return new Figure(symbol, Kind.ELAPSED, quantity.seconds());
    }

    static Figure of(String symbol, Power quantity) {
        return new Figure(symbol, Kind.POWER, quantity.watts());
    }

    static Figure of(String symbol, Length quantity) {
        return new Figure(symbol, Kind.ELEVATION, quantity.metres());
    }

    static Figure of(String symbol, ShaftSpeed quantity) {
        return new Figure(symbol, Kind.SPEED, quantity.perMinute());
    }

    static Figure ratio(String symbol, double ratio) {
        return new Figure(symbol, Kind.RATIO, ratio);
    }

    static Figure percent(String symbol, double ratio) {
        return new Figure(symbol, Kind.PERCENT, ratio);
    }

    static Figure count(String symbol, int count) {
        return new Figure(symbol, Kind.COUNT, count);
    }
}
