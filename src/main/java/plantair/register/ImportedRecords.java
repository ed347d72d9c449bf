package plantair.register;

import java.util.Optional;

/**
 * Records that whoever takes in everything of another installation asks once all of it is in: each cell may be sound and the
 * record still contradict itself.
 */
public interface ImportedRecords {

    /**
     * A record of which nothing can be made.
     *
     * @param file name of its file, with its ending
     * @param id number of the record
     */
    record Impossible(String file, long id) {}

    /** The first such record; empty when all are sound. */
    Optional<Impossible> impossible();
}
