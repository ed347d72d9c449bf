package plantair.storage.web;

import java.util.List;
import plantair.web.Status;
import plantair.web.Words;

/**
 * An answer about storage in words and in the units of a person.
 *
 * @param answer the answer
 * @param more what else there is to say of the event
 * @param cycles how often each machine switches; empty where that was not asked
 * @param band what a mean pressure above the lowest costs; empty where no cut-out was typed
 * @param facts what it was reckoned with
 * @param working the steps with their numbers
 */
record StorageView(
        Words answer, List<Words> more, List<Cycle> cycles, List<Words> band, List<Fact> facts, List<Words> working) {

    /**
     * How often a machine switches.
     *
     * @param label how the plant calls it; empty for a capacity typed here
     * @param capacity what it delivers
     * @param control name of what is switched; empty where it does not switch, or nobody knows
     * @param worst most cycles an hour, at half load
     * @param most it bears
     * @param now cycles an hour at the steady use and the leaks; empty where several machines run
     * @param least smallest volume with which it would never cycle too often
     * @param status whether it cycles too often
     */
    record Cycle(
            String label,
            String capacity,
            String control,
            String worst,
            String most,
            String now,
            String least,
            Status status) {}

    /**
     * Something that was reckoned with.
     *
     * @param label key of its name
     * @param text number and unit
     * @param source where it comes from
     */
    record Fact(String label, String text, Words source) {}
}
