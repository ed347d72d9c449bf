package plantair.leaktest;

import jakarta.persistence.Embeddable;
import plantair.quantity.Entered;

/**
 * A pressure of a shut volume, as typed.
 *
 * @param atTime time from the first reading, or from the stop of the machine
 * @param pressure gauge pressure
 */
@Embeddable
public record FallReading(Entered atTime, Entered pressure) {}
