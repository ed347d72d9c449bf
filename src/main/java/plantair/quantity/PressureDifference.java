package plantair.quantity;

/**
 * The difference of two pressures; the same for gauge and absolute.
 *
 * @param pascals Pa
 */
public record PressureDifference(double pascals) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public PressureDifference {
        Checks.finite(pascals, "pascals");
    }

    /** The quantity from a number in a unit. */
    public static PressureDifference of(double value, PressureUnit unit) {
        return new PressureDifference(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static PressureDifference of(Entered entered) {
        return of(entered.value(), entered.unitAs(PressureUnit.class));
    }

    /** The number in this unit. */
    public double in(PressureUnit unit) {
        return unit.fromSi(pascals);
    }
}
