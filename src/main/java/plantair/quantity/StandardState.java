package plantair.quantity;

/**
 * A named state to which a standard flow refers.
 *
 * @param pressure absolute pressure
 * @param temperature temperature
 * @param humidity relative humidity
 */
public record StandardState(AbsolutePressure pressure, Temperature temperature, RelativeHumidity humidity) {

    static StandardState of(
            double pressure, PressureUnit pressureUnit, double temperature, TemperatureUnit scale, double humidity) {
        return new StandardState(
                AbsolutePressure.of(pressure, pressureUnit),
                Temperature.of(temperature, scale),
                new RelativeHumidity(humidity));
    }
}
