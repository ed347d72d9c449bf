package plantair.pumpup;

import plantair.quantity.Power;

/**
 * What was measured at a running motor.
 *
 * @param volts between two lines, V, above zero
 * @param amps in one line, A, above zero
 * @param phases 1 or 3
 * @param powerFactor above 0, up to 1
 * @param efficiency shaft power over electric power, above 0, up to 1
 */
public record MotorDraw(double volts, double amps, int phases, double powerFactor, double efficiency) {

    /** @throws IllegalArgumentException when a number is outside its range */
    public MotorDraw {
        if (!(volts > 0 && amps > 0 && (phases == 1 || phases == 3))) {
            throw new IllegalArgumentException(volts + " V, " + amps + " A, " + phases + " phases");
        }
        if (!(powerFactor > 0 && powerFactor <= 1 && efficiency > 0 && efficiency <= 1)) {
            throw new IllegalArgumentException("power factor " + powerFactor + ", efficiency " + efficiency);
        }
    }

    /** Power at the shaft (M17): volts × amps × √3 for three phases × power factor × efficiency. */
    public Power shaftPower() {
        double phaseFactor = phases == 3 ? StrictMath.sqrt(3) : 1;
        return new Power(volts * amps * phaseFactor * powerFactor * efficiency);
    }
}
