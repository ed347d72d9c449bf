package plantair.maintenance;

/** What was done. */
public enum EventKind {
    /** Belt tensioned, aligned or replaced. */
    BELT(true),
    /** Valves of a piston machine cleaned, lapped or replaced. */
    VALVES(true),
    /** Piston rings replaced. */
    RINGS(true),
    /** Intake filter cleaned or replaced. */
    FILTER(false),
    /** Airend, or whatever does the compressing, overhauled or replaced. */
    AIREND(true),
    /** The gauge with which tests are read was replaced or adjusted. */
    GAUGE_CHANGE(false),
    /** Water drained from the receiver. */
    DRAIN(false),
    /** Anything else; its note says what. */
    OTHER(false);

    private final boolean mayChangeOutput;

    EventKind(boolean mayChangeOutput) {
        this.mayChangeOutput = mayChangeOutput;
    }

    /** Whether such work usually may change what the machine delivers; the person who records an event can say otherwise. */
    public boolean mayChangeOutput() {
        return mayChangeOutput;
    }
}
