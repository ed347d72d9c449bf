package plantair.quantity;

/**
 * The difference of two temperatures; unlike a temperature it has no zero of a scale.
 *
 * @param kelvin K
 */
public record TemperatureDifference(double kelvin) {

    /** @throws IllegalArgumentException when not finite */
    public TemperatureDifference {
        Checks.finite(kelvin, "kelvin");
    }

    /** From degrees of a scale as typed: 9 °F are 5 K. */
    public static TemperatureDifference of(Entered entered) {
        TemperatureUnit unit = entered.unitAs(TemperatureUnit.class);
        return new TemperatureDifference(unit.differenceToSi(entered.value()));
    }
}
