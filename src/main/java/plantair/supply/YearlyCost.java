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
        double kilowatts, double kilowattHours, @Nullable Double money, double relativeU) {}
