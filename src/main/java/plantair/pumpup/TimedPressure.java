package plantair.pumpup;

import plantair.quantity.GaugePressure;

/**
 * A pressure at a time: a gauge mark passed, or one line of a logger.
 *
 * @param seconds from any fixed moment, s; finite
 * @param pressure true gauge pressure, errors of the gauge taken off
 */
public record TimedPressure(double seconds, GaugePressure pressure) {

    /** @throws IllegalArgumentException when the time is not finite */
    public TimedPressure {
        if (!(Math.abs(seconds) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("seconds must be finite: " + seconds);
        }
    }

    double pascals() {
        return pressure.pascals();
    }
}
