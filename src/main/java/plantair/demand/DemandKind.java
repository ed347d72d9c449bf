package plantair.demand;

/** What takes air. */
public enum DemandKind {
    /** A tool or machine with a figure on its plate. */
    TOOL,
    /** A nozzle for abrasive blasting. */
    BLAST_NOZZLE,
    /** Another nozzle, or an open blow. */
    OPEN_NOZZLE,
    /** Much air for a short time, again and again. */
    EVENT,
    /** Anything else with a known flow. */
    OTHER
}
