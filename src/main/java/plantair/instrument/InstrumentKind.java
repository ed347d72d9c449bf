package plantair.instrument;

import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.Unit;

/** What an instrument measures. */
public enum InstrumentKind {
    /** Pressure gauge. */
    GAUGE(PressureUnit.class),
    /** Stopwatch or clock. */
    TIMER(DurationUnit.class),
    /** Thermometer; an error of it is a difference of temperatures. */
    THERMOMETER(TemperatureUnit.class),
    /** Barometer. */
    BAROMETER(PressureUnit.class),
    /** Tachometer, hygrometer, clamp meter and the like. */
    OTHER(FixedUnit.class);

    private final Class<? extends Unit> unit;

    InstrumentKind(Class<? extends Unit> unit) {
        this.unit = unit;
    }

    /** The units its readings and errors are in. */
    public Class<? extends Unit> unit() {
        return unit;
    }
}
