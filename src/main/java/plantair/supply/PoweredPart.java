package plantair.supply;

import plantair.quantity.Power;

/**
 * What one compressor delivers and takes, at one and the same pressure.
 *
 * @param part its flow and what makes it unsure
 * @param input electric power, above zero
 */
public record PoweredPart(CapacityPart part, Power input) {

    /** @throws IllegalArgumentException when flow or power is not above zero */
    public PoweredPart {
        if (!(part.perSecond() > 0 && input.watts() > 0)) {
            throw new IllegalArgumentException("flow and power must be positive: " + part + ", " + input);
        }
    }
}
