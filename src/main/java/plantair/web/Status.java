package plantair.web;

/**
 * The state of a thing as a word and a shape, so that colour never carries it alone.
 *
 * @param kind decides shape and colour
 * @param word what the reader reads
 */
public record Status(Kind kind, String word) {

    /** The few kinds of state. */
    public enum Kind {
        /** As it should be. */
        GOOD("●"),
        /** Worth a look. */
        WATCH("▲"),
        /** Act on it. */
        ALARM("■"),
        /** Nothing can be said. */
        NONE("○");

        private final String shape;

        Kind(String shape) {
            this.shape = shape;
        }
    }

    /** The sign before the word. */
    public String shape() {
        return kind.shape;
    }
}
