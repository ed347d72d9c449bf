package plantair.supply;

/**
 * An error that several flows of a site have in common.
 *
 * @param source what they share: a gauge, a receiver, a way of testing
 * @param relative relative standard uncertainty that it gives the flow, zero or more
 */
public record SharedPart(String source, double relative) {

    /** @throws IllegalArgumentException when the uncertainty is below zero or not finite */
    public SharedPart {
        if (!(relative >= 0 && relative <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("relative must not be negative: " + relative);
        }
    }
}
