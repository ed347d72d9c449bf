package plantair.quantity;

/**
 * Power of a motor or of the work on the air.
 *
 * @param watts W, zero or more
 */
public record Power(double watts) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public Power {
        Checks.notNegative(watts, "watts");
    }

    /** The quantity from a number in a unit. */
    public static Power of(double value, PowerUnit unit) {
        return new Power(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static Power of(Entered entered) {
        return of(entered.value(), entered.unitAs(PowerUnit.class));
    }

    /** The number in this unit. */
    public double in(PowerUnit unit) {
        return unit.fromSi(watts);
    }
}
