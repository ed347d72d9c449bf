package plantair.quantity;

/**
 * Volume that a vessel or a pipe can hold. Not a volume of free air.
 *
 * @param cubicMetres m³, zero or more
 */
public record VesselVolume(double cubicMetres) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public VesselVolume {
        Checks.notNegative(cubicMetres, "cubicMetres");
    }

    /** The quantity from a number in a unit. */
    public static VesselVolume of(double value, VolumeUnit unit) {
        return new VesselVolume(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static VesselVolume of(Entered entered) {
        return of(entered.value(), entered.unitAs(VolumeUnit.class));
    }

    /** The number in this unit. */
    public double in(VolumeUnit unit) {
        return unit.fromSi(cubicMetres);
    }

    /** The sum of two volumes. */
    public VesselVolume plus(VesselVolume other) {
        return new VesselVolume(cubicMetres + other.cubicMetres);
    }
}
