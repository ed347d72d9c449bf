package plantair.quantity;

/**
 * Relative humidity over water.
 *
 * @param fraction vapour pressure as a part of saturation, 0 to 1
 */
public record RelativeHumidity(double fraction) {

    /** @throws IllegalArgumentException when outside 0 to 1 */
    public RelativeHumidity {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("fraction must be 0 to 1: " + fraction);
        }
    }

    /** From a percentage as typed. */
    public static RelativeHumidity of(Entered entered) {
        return new RelativeHumidity(entered.part());
    }
}
