package plantair.trend;

import plantair.quantity.FlowRate;

/**
 * Flow on the line at a day (T2).
 *
 * @param flow on the line
 * @param relativeU its relative standard uncertainty, errors shared by all tests left out
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 */
public record Level(FlowRate flow, double relativeU, FlowRate low, FlowRate high) {}
