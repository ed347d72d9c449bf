package plantair.demand;

import jakarta.persistence.Embeddable;

/**
 * A machine that does not run together with the others.
 *
 * @param compressorId its id
 * @param tag how the plant called it when it was chosen
 */
@Embeddable
public record StandbyMachine(long compressorId, String tag) {}
