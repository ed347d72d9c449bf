package plantair.pumpup;

import java.util.Comparator;
import java.util.List;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;

/**
 * How far a pressure gauge can be trusted.
 *
 * @param span from zero to full scale, above zero
 * @param limitPart largest error as a part of span, from its grade or class; 0.01 for 1 %
 * @param division smallest step that can be read, above zero
 * @param errors what a certificate found, in any order; may be empty
 */
public record GaugeAccuracy(
        PressureDifference span, double limitPart, PressureDifference division, List<GaugeError> errors) {

    /** @throws IllegalArgumentException when span, limit or division is not above zero */
    public GaugeAccuracy {
        if (!(span.pascals() > 0 && limitPart > 0 && limitPart < 1 && division.pascals() > 0)) {
            throw new IllegalArgumentException("span, limit and division must be positive: " + span + ", " + limitPart);
        }
        errors = errors.stream()
                .sorted(Comparator.comparingDouble(error -> error.reading().pascals()))
                .toList();
    }

    /** Largest error anywhere, e = c F, Pa. */
    public double limitPa() {
        return limitPart * span.pascals();
    }

    /** Standard uncertainty of one reading: half the readable division, rectangular, Pa. */
    public double readingU() {
        return division.pascals() / 2 / StrictMath.sqrt(3);
    }

    /** The true pressure behind a reading: the certificate's errors taken off, straight between its points. */
    public GaugePressure corrected(GaugePressure reading) {
        return new GaugePressure(reading.pascals() - errorPa(reading.pascals()));
    }

    private double errorPa(double reading) {
        if (errors.isEmpty()) {
            return 0;
        }
        GaugeError low = errors.get(0);
        for (GaugeError high : errors) {
            double to = high.reading().pascals();
            if (reading <= to) {
                double from = low.reading().pascals();
                double part = to == from ? 1 : (reading - from) / (to - from);
                return reading < from
                        ? low.error().pascals()
                        : low.error().pascals()
                                + part * (high.error().pascals() - low.error().pascals());
            }
            low = high;
        }
        return low.error().pascals();
    }
}
