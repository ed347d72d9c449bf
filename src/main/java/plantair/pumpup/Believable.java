package plantair.pumpup;

import java.util.Optional;
import plantair.quantity.FlowRate;

/**
 * The flow that a machine might well have, for a result that needs an explanation: rated flow times 0.98 when the result
 * is above the rating, the rated flow itself when it is more than a tenth below. Limits are our own.
 *
 * @param flow free air delivered at the intake, in the test
 * @param ofRating as a part of the rated flow
 */
public record Believable(FlowRate flow, double ofRating) {

    private static final double TOO_HIGH = 1.05;
    private static final double TOO_LOW = 0.9;
    private static final double USUAL = 0.98;

    /** Empty when the result needs no explanation or cannot be compared. */
    public static Optional<Believable> of(PumpUpResult result) {
        RatingComparison rating = result.rating();
        FlowRate freeAir = result.freeAir();
        if (rating == null || freeAir == null || rating.ratio() <= TOO_HIGH && rating.ratio() >= TOO_LOW) {
            return Optional.empty();
        }
        double part = rating.ratio() > TOO_HIGH ? USUAL : 1;
        return Optional.of(new Believable(new FlowRate(freeAir.cubicMetresPerSecond() * part / rating.ratio()), part));
    }
}
