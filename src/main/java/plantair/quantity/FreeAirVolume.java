package plantair.quantity;

/**
 * Volume of an amount of air, taken at a stated state such as the intake. Not the volume of a vessel.
 *
 * @param cubicMetres m³, zero or more
 */
public record FreeAirVolume(double cubicMetres) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public FreeAirVolume {
        Checks.notNegative(cubicMetres, "cubicMetres");
    }

    /** The quantity from a number in a unit. */
    public static FreeAirVolume of(double value, VolumeUnit unit) {
        return new FreeAirVolume(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static FreeAirVolume of(Entered entered) {
        return of(entered.value(), entered.unitAs(VolumeUnit.class));
    }

    /** The number in this unit. */
    public double in(VolumeUnit unit) {
        return unit.fromSi(cubicMetres);
    }
}
