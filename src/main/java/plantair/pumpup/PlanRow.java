package plantair.pumpup;

import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;

/**
 * One band that a test could use. Uncertainties are relative and standard (k = 1), of one run.
 *
 * @param start where the clock would start
 * @param elapsed how long it would run
 * @param warming by how much a flow without any regard to air temperature would be too high, and how surely (M9)
 * @param reading of the needle at both ends; new each time
 * @param clock starting and stopping it; new each time
 * @param gauge error of the gauge; the same in every test with it between the same marks
 * @param volume of the receivers; the same in every test with them
 * @param perKelvin relative change of the flow for one kelvin at each end, both unknown to each other, 1/K
 * @param thermometerU standard uncertainty of an air temperature, K
 */
public record PlanRow(
        GaugePressure start,
        Elapsed elapsed,
        WarmingFactor warming,
        double reading,
        double clock,
        double gauge,
        double volume,
        double perKelvin,
        double thermometerU) {

    /** Part of a thermometer's error that is new each time, K; our own default, as in the budget of a result. */
    private static final double AIR_REPEAT_K = 0.3;

    /** By how much a flow without any regard to the air temperature would be too high, 0.1 for 10 % (M9). */
    public double overstated() {
        return warming.factor() - 1;
    }

    /** What is new in each test: needle and clock; air at the start not as cool as taken; the thermometer's scatter. */
    public double perTest(AirTemperature air) {
        double own = StrictMath.hypot(reading, clock);
        return switch (air) {
            case MEASURED -> StrictMath.hypot(own, AIR_REPEAT_K * perKelvin);
            case NOT_MEASURED -> StrictMath.hypot(own, warming.relativeRandom());
            case SETTLED -> own;
        };
    }

    /** What tests have in common: gauge, volume, and the warming model or the thermometer. */
    public double shared(AirTemperature air) {
        double temperature = air == AirTemperature.NOT_MEASURED ? warming.relativeShared() : thermometerU * perKelvin;
        return StrictMath.hypot(StrictMath.hypot(gauge, volume), temperature);
    }

    /** Both together: of the flow itself. */
    public double combined(AirTemperature air) {
        return StrictMath.hypot(perTest(air), shared(air));
    }
}
