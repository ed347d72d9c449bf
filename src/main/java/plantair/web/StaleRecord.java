package plantair.web;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The record was changed by somebody else since the form was opened; shown as page 409. */
public final class StaleRecord extends RuntimeException {

    private final transient @Nullable Later later;

    /**
     * The record that took the place of the one looked at.
     *
     * @param href its page
     * @param by who made it
     * @param at when
     * @param reason why
     */
    public record Later(String href, String by, Instant at, String reason) {}

    public StaleRecord(String message) {
        this(message, null);
    }

    public StaleRecord(String message, @Nullable Later later) {
        super(message);
        this.later = later;
    }

    /** What took its place, when that is known. */
    public Optional<Later> later() {
        return Optional.ofNullable(later);
    }
}
