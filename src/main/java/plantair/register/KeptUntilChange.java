package plantair.register;

import java.time.Clock;
import java.time.Duration;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something that is read from the records, kept until somebody changes one: while nobody does, asking for it is one question
 * for the end of the chain of changes, whichever instance wrote that. Each full quarter of an hour it is made anew in any case.
 */
public final class KeptUntilChange<T> {

    /** Days begin at full quarters of an hour of UTC, wherever that is. */
    private static final Duration DAY_BEGINS_EVERY = Duration.ofMinutes(15);

    private final Changes changes;
    private final Clock clock;
    private final Supplier<T> maker;
    private volatile @Nullable Made<T> newest;

    /** @param maker reads the records, all that it needs by itself */
    public KeptUntilChange(Changes changes, Clock clock, Supplier<T> maker) {
        this.changes = changes;
        this.clock = clock;
        this.maker = maker;
    }

    /** A value, and the end of the chain and the quarter of an hour up to which it is as good as one made now. */
    private record Made<T>(ChainEnd end, long quarter, T value) {}

    /** As good as made now. */
    public T get() {
        // the end of the chain first: a change that comes before the records are read makes the next one anew
        ChainEnd end = changes.end().orElse(null);
        long quarter = Math.floorDiv(clock.instant().getEpochSecond(), DAY_BEGINS_EVERY.toSeconds());
        Made<T> known = newest;
        if (known == null || !known.end().equals(end) || known.quarter() != quarter) {
            T value = maker.get();
            newest = end == null ? null : new Made<>(end, quarter, value);
            return value;
        }
        return known.value();
    }

    /** Makes it anew for whoever asks next; after records were put right without a line in the chain. */
    public void forget() {
        newest = null;
    }
}
