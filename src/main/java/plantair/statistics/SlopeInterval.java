package plantair.statistics;

/**
 * Interval of a slope.
 *
 * @param low its lower end, in the unit of y per unit of x
 * @param high its upper end, at least the lower one
 */
public record SlopeInterval(double low, double high) {}
