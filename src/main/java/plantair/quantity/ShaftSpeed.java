package plantair.quantity;

/**
 * Speed of the compressor's shaft.
 *
 * @param perMinute revolutions a minute, above zero
 */
public record ShaftSpeed(double perMinute) {

    /** @throws IllegalArgumentException when not above zero */
    public ShaftSpeed {
        Checks.positive(perMinute, "perMinute");
    }

    /** From a speed as typed. */
    public static ShaftSpeed of(Entered entered) {
        FixedUnit unit = entered.unitAs(FixedUnit.class);
        if (unit != FixedUnit.RPM) {
            throw new IllegalArgumentException(entered.text() + " is not in revolutions a minute");
        }
        return new ShaftSpeed(entered.value());
    }
}
