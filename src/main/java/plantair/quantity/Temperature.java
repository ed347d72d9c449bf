package plantair.quantity;

/**
 * Thermodynamic temperature.
 *
 * @param kelvin K, above zero
 */
public record Temperature(double kelvin) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public Temperature {
        Checks.positive(kelvin, "kelvin");
    }

    /** The quantity from a number in a unit. */
    public static Temperature of(double value, TemperatureUnit unit) {
        return new Temperature(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static Temperature of(Entered entered) {
        return of(entered.value(), entered.unitAs(TemperatureUnit.class));
    }

    /** The number in this unit. */
    public double in(TemperatureUnit unit) {
        return unit.fromSi(kelvin);
    }
}
