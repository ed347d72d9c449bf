package plantair.pumpup;

/**
 * By how much a figure that takes the receiver air as cool as the intake overstates the flow (M9).
 *
 * @param factor F, 1 to about 1.5; flow = figure / F
 * @param relativeShared relative standard uncertainty of F from heat transfer and inlet temperature, the same for every
 *     test of one installation
 * @param relativeRandom relative standard uncertainty from the air at the start not being as cool as taken, new each test
 * @param warming rise of the air temperature during the run in the model, K
 */
public record WarmingFactor(double factor, double relativeShared, double relativeRandom, double warming) {}
