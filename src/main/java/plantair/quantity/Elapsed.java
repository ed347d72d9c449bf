package plantair.quantity;

/**
 * Time between start and stop of the clock.
 *
 * @param seconds s, above zero
 */
public record Elapsed(double seconds) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public Elapsed {
        Checks.positive(seconds, "seconds");
    }

    /** The quantity from a number in a unit. */
    public static Elapsed of(double value, DurationUnit unit) {
        return new Elapsed(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static Elapsed of(Entered entered) {
        return of(entered.value(), entered.unitAs(DurationUnit.class));
    }

    /** The number in this unit. */
    public double in(DurationUnit unit) {
        return unit.fromSi(seconds);
    }
}
