package plantair.transfer;

import java.util.Set;
import java.util.TreeSet;

/** What looking through an upload found. */
public final class Findings {

    private final Remarks problems;
    private final Remarks notes;
    private final Set<String> machines = new TreeSet<>();
    private long tests;
    private long known;

    public Findings() {
        this(new Remarks(), new Remarks(), Set.of(), 0, 0);
    }

    Findings(Remarks problems, Remarks notes, Set<String> machines, long tests, long known) {
        this.problems = problems;
        this.notes = notes;
        this.machines.addAll(machines);
        this.tests = tests;
        this.known = known;
    }

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
