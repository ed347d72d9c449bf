package plantair.instrument;

import jakarta.persistence.Embeddable;
import plantair.quantity.Entered;

/**
 * What a laboratory found at one point, before any adjustment.
 *
 * @param reading what the instrument showed
 * @param error reading less true value, above zero when it reads high; a difference, also for temperatures
 */
@Embeddable
public record AsFound(Entered reading, Entered error) {}
