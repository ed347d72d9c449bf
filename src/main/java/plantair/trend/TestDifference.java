package plantair.trend;

/**
 * Two tests beside each other, from the first to the second.
 *
 * @param percent change, below zero for a loss
 * @param halfWidthPercent half-width of its 95 % interval
 */
public record TestDifference(double percent, double halfWidthPercent) {}
