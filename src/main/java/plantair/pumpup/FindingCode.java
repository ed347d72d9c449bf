package plantair.pumpup;

/** The findings of the pump-up method. Catalogue with wording and reason: docs/findings.md. */
public enum FindingCode {
    /** A run went above the lowest MAWP. */
    ABOVE_MAWP(Severity.HAZARD),
    /** Runs rise or fall steadily beyond their uncertainty and are not averaged (M19). */
    RUNS_DRIFT(Severity.STOP),
    /** A run shows no air delivered. */
    NO_DELIVERY(Severity.STOP),
    /** More air than the motor could have compressed (M17). */
    IMPOSSIBLE_POWER(Severity.STOP, true),
    /** More air than the cylinders sweep (M16). */
    IMPOSSIBLE_DISPLACEMENT(Severity.STOP, true),
    /** So far above the rating that it cannot be the machine. */
    TOO_GOOD(Severity.STOP, true),
    /** The pressure rose while the machine stood: something else feeds in. */
    HOLD_ROSE(Severity.STOP, true),
    /** Another machine was on the same receiver. */
    OTHER_MACHINE_ON(Severity.STOP, true),
    /** The drive followed the pressure: the result shows the control, not the machine. */
    SPEED_FREE(Severity.STOP, true),
    /** The static hold fell and the leak was added back (M10). */
    LEAK_ADDED(Severity.CAUTION, true),
    /** The static hold fell through the machine's own check valve; nothing was added back. */
    CHECK_VALVE_LEAKS(Severity.CAUTION),
    /** An efficiency that such a machine hardly has (M17). */
    UNLIKELY_POWER(Severity.CAUTION),
    /** Whether the machine meets its rating cannot be told (M15). */
    VERDICT_OPEN(Severity.NOTE),
    /** The gauge is not known, so a default stands for its error. */
    GAUGE_UNKNOWN(Severity.NOTE),
    /** No static hold was made. */
    HOLD_MISSING(Severity.NOTE),
    /** Runs scatter more than a good test does. */
    RUNS_SCATTER(Severity.CAUTION),
    /** Fewer than three runs. */
    FEW_RUNS(Severity.CAUTION),
    /** A run shorter than 30 s. */
    SHORT_RUN(Severity.CAUTION),
    /** The band starts too low to tell the flow at working pressure (M12). */
    LOW_START(Severity.CAUTION),
    /** Receiver air not measured: the hand figure is an upper bound (M9). */
    AIR_NOT_MEASURED(Severity.CAUTION),
    /** Receiver air not measured; the machine's own factor from earlier settled readings stands in (M9). */
    FACTOR_LEARNED(Severity.NOTE),
    /** How far the hand figure is from the full one, because of air temperature, humidity and compressibility. */
    HAND_DIFFERS(Severity.NOTE),
    /** Humidity was not read. */
    HUMIDITY_ASSUMED(Severity.NOTE),
    /** The barometer is further from what the site leads to expect than weather goes; perhaps reduced to sea level. */
    BAROMETER_SUSPECT(Severity.CAUTION),
    /** Station pressure from elevation, not read. */
    BAROMETER_FROM_ELEVATION(Severity.NOTE),
    /** More than the maker claims: check before believing. */
    ABOVE_RATING(Severity.CAUTION),
    /** No rating to compare with. */
    RATING_MISSING(Severity.NOTE),
    /** The rating's basis is not known, so no percentage is given (M13). */
    RATING_BASIS_UNKNOWN(Severity.CAUTION),
    /** The rating is a displacement, which is no delivery (M13). */
    RATING_IS_DISPLACEMENT(Severity.CAUTION),
    /** The rating was extrapolated to the test's pressure (M13). */
    RATING_EXTRAPOLATED(Severity.CAUTION),
    /** The rating points are so far from the test that extrapolating leaves no flow (M13). */
    RATING_OUT_OF_REACH(Severity.CAUTION),
    /** One rating point only; how far away the test was (M13). */
    RATING_ONE_POINT(Severity.NOTE),
    /** The flow was referred to rated speed (M14). */
    SPEED_REFERRED(Severity.NOTE);

    private final Severity severity;
    private final boolean keptFromTrend;

    FindingCode(Severity severity) {
        this(severity, false);
    }

    FindingCode(Severity severity, boolean keptFromTrend) {
        this.severity = severity;
        this.keptFromTrend = keptFromTrend;
    }

    /** True when a test with this finding does not show the machine's wear and never joins its trend. */
    public boolean isKeptFromTrend() {
        return keptFromTrend;
    }

    /** How much it matters. */
    public Severity severity() {
        return severity;
    }
}
