package plantair.quantity;

/**
 * Length, bore, or elevation above sea level.
 *
 * @param metres m; finite, an elevation may be below zero
 */
public record Length(double metres) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public Length {
        Checks.finite(metres, "metres");
    }

    /** The quantity from a number in a unit. */
    public static Length of(double value, LengthUnit unit) {
        return new Length(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static Length of(Entered entered) {
        return of(entered.value(), entered.unitAs(LengthUnit.class));
    }

    /** The number in this unit. */
    public double in(LengthUnit unit) {
        return unit.fromSi(metres);
    }
}
