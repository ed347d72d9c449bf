package plantair.leaktest;

/** What leaks. */
public enum LeakComponent {
    COUPLING,
    HOSE,
    THREAD,
    VALVE,
    DRAIN,
    FILTER,
    REGULATOR,
    CYLINDER,
    TOOL,
    PIPE,
    OTHER
}
