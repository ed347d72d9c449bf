package plantair.transfer;

import java.util.Set;
import java.util.TreeSet;

/** What looking through an upload found. */
public final class Findings {

    private final Remarks problems = new Remarks();
    private final Remarks notes = new Remarks();
    private final Set<String> machines = new TreeSet<>();
    private long tests;
    private long known;

    /** What must be put right before anything is taken in. */
    public Remarks problems() {
        return problems;
    }

    /** What is worth knowing before. */
    public Remarks notes() {
        return notes;
    }

    /** Site and tag of every machine with a new test. */
    public Set<String> machines() {
        return machines;
    }

    /** How many tests are new. */
    public long tests() {
        return tests;
    }

    /** How many are in the records already; they are left out. */
    public long known() {
        return known;
    }

    void addNew(String machine) {
        machines.add(machine);
        tests++;
    }

    void addKnown() {
        known++;
    }

    void addTests(long more) {
        tests += more;
    }
}
