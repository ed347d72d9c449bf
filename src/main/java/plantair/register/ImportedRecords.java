package plantair.register;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;
import org.springframework.data.domain.Limit;

/**
 * Records that whoever takes in everything of another installation asks once all of it is in: each cell may be sound and the
 * record still contradict itself.
 */
public interface ImportedRecords {

    /** Records read at once. */
    int BATCH = 100;

    /**
     * A record of which nothing can be made.
     *
     * @param file name of its file, with its ending
     * @param id number of the record
     */
    record Impossible(String file, long id) {}

    /** The first such record; empty when all are sound. */
    Optional<Impossible> impossible();

    /**
     * Looks at one record after another by its number.
     *
     * @param file name of their file, with its ending
     * @param after so many of the records whose number is larger than this, in the order of their numbers
     * @param id number of a record
     * @param reckoning what is made of a record; it refuses what contradicts itself. No form has seen these records, so
     *     whatever it fails with is a fault of the record
     */
    static <R> Optional<Impossible> first(
            String file, BiFunction<Long, Limit, List<R>> after, ToLongFunction<R> id, Consumer<R> reckoning) {
        List<R> batch = after.apply(0L, Limit.of(BATCH));
        while (!batch.isEmpty()) {
            for (R one : batch) {
                try {
                    reckoning.accept(one);
                } catch (RuntimeException contradiction) {
                    return Optional.of(new Impossible(file, id.applyAsLong(one)));
                }
            }
            batch = after.apply(id.applyAsLong(batch.get(batch.size() - 1)), Limit.of(BATCH));
        }
        return Optional.empty();
    }
}
