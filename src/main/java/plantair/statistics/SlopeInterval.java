package plantair.statistics;

/**
 * A slope and its interval, each in the unit of y per unit of x.
 *
 * @param low lower end
 * @param middle the slope
 * @param high upper end
 */
public record SlopeInterval(double low, double middle, double high) {}
