package plantair.pumpup;

import plantair.quantity.Power;

/** Power of a motor from what was measured at its terminals (M17). */
public final class MotorInput {

    private MotorInput() {}

    /**
     * Electric power into the motor: V I cos φ for one phase, √3 V I cos φ for three (M17). Source: electrical
     * engineering, common knowledge.
     *
     * @param volts between the lines, above zero
     * @param amps in a line, zero or more
     * @param phases 1 or 3
     * @param powerFactor above 0, at most 1
     * @throws IllegalArgumentException when an argument is outside its range
     */
    public static Power electrical(double volts, double amps, int phases, double powerFactor) {
        if (!(volts > 0 && amps >= 0 && powerFactor > 0 && powerFactor <= 1)) {
            throw new IllegalArgumentException("outside its range: " + volts + " V, " + amps + " A, " + powerFactor);
        }
        if (phases != 1 && phases != 3) {
            throw new IllegalArgumentException("phases must be 1 or 3: " + phases);
        }
        return new Power(StrictMath.sqrt(phases) * volts * amps * powerFactor);
    }

    /**
     * Power at the shaft.
     *
     * @param input electric power
     * @param efficiency of the motor, and of the belt where that is between; above 0, at most 1
     * @throws IllegalArgumentException when the efficiency is outside its range
     */
    public static Power shaft(Power input, double efficiency) {
        if (!(efficiency > 0 && efficiency <= 1)) {
            throw new IllegalArgumentException("efficiency must be above 0 and at most 1: " + efficiency);
        }
        return new Power(input.watts() * efficiency);
    }
}
