package plantair.quantity;

/**
 * Pressure above the atmosphere of the place, as a gauge shows it.
 *
 * @param pascals Pa; finite, may be below zero in a vacuum
 */
public record GaugePressure(double pascals) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public GaugePressure {
        Checks.finite(pascals, "pascals");
    }

    /** The quantity from a number in a unit. */
    public static GaugePressure of(double value, PressureUnit unit) {
        return new GaugePressure(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static GaugePressure of(Entered entered) {
        return of(entered.value(), entered.unitAs(PressureUnit.class));
    }

    /** The number in this unit. */
    public double in(PressureUnit unit) {
        return unit.fromSi(pascals);
    }

    /**
     * The absolute pressure: gauge reading plus station pressure.
     *
     * @throws IllegalArgumentException when the sum is not above zero, which no gauge can truly show
     */
    public AbsolutePressure above(AbsolutePressure barometer) {
        return new AbsolutePressure(pascals + barometer.pascals());
    }

    /** This pressure less a lower one. */
    public PressureDifference minus(GaugePressure lower) {
        return new PressureDifference(pascals - lower.pascals);
    }

    /** The mean of two gauge pressures. */
    public static GaugePressure mid(GaugePressure a, GaugePressure b) {
        return new GaugePressure((a.pascals + b.pascals) / 2);
    }
}
