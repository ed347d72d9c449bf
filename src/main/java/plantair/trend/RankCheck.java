package plantair.trend;

/**
 * The trend by ranks alone (T8), which one wild test cannot move far. A cross-check, never the headline.
 *
 * @param probability of an order as one-sided by chance, two-sided, between 0 and 1
 * @param percent median change in a year, percent
 * @param lowPercent lower end of its 95 % interval
 * @param highPercent upper end of its 95 % interval
 * @param agrees false when the line signals a trend that the ranks do not see at all
 */
public record RankCheck(double probability, double percent, double lowPercent, double highPercent, boolean agrees) {}
