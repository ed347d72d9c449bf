package plantair.quantity;

/**
 * Pressure above perfect vacuum; a barometer shows it.
 *
 * @param pascals Pa, above zero
 */
public record AbsolutePressure(double pascals) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public AbsolutePressure {
        Checks.positive(pascals, "pascals");
    }

    /** The quantity from a number in a unit. */
    public static AbsolutePressure of(double value, PressureUnit unit) {
        return new AbsolutePressure(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static AbsolutePressure of(Entered entered) {
        return of(entered.value(), entered.unitAs(PressureUnit.class));
    }

    /** The number in this unit. */
    public double in(PressureUnit unit) {
        return unit.fromSi(pascals);
    }

    /** This pressure as a gauge at the place of the barometer shows it. */
    public GaugePressure gaugeAt(AbsolutePressure barometer) {
        return new GaugePressure(pascals - barometer.pascals);
    }
}
