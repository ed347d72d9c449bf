package plantair.supply;

import org.jspecify.annotations.Nullable;

/**
 * What some air costs in a year (S20).
 *
 * @param kilowatts power that it takes while it is made
 * @param kilowattHours energy of a year
 * @param money of a year; null where no tariff is known
 * @param relativeU relative standard uncertainty of all three; hours and tariff are taken as they are
 */
public record YearlyCost(
        double kilowatts, double kilowattHours, @Nullable Double money, double relativeU) {

    /** One-sided 95 %, as in T12. */
    private static final double FACTOR = 1.645;

    /** Whether its uncertainty lets be told that it is above zero at all. */
    public boolean isTold() {
        return kilowatts > 0 && FACTOR * relativeU < 1;
    }
}
