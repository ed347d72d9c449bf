package plantair.pumpup;

/** What is said of a rise of pressure and the flow found from it. Catalogue: docs/supply.md. */
public enum CurveCode {
    /** Times run backwards. The number is how often. */
    TIME_FALLS(true),
    /** Too few points near the pressure. The number is how many there are. */
    FEW_POINTS(true),
    /** The pressure lies outside the readings: a flow there would be extrapolated. The number is how far, Pa. */
    NOT_COVERED(true),
    /** The fitted pressure does not rise all the way. The number is t of its slope. */
    NOT_RISING(true),
    /** Readings before the rise or after it were left out. The number is how many. */
    LEFT_OUT(false),
    /** The pressure fell between readings within the rise. The number is how often. */
    PRESSURE_FELL(false),
    /** Readings follow each other with equal pressure. The number is how often. */
    PRESSURE_STOOD(false),
    /** The pressure lies near an end of the readings. The number is the share of their range beyond it. */
    NEAR_EDGE(false),
    /** The readings bend more than the fitted curve does. The number is t of the next terms, the larger one. */
    BENDS(false);

    private final boolean stop;

    CurveCode(boolean stop) {
        this.stop = stop;
    }

    /** True when no flow can be told. */
    public boolean isStop() {
        return stop;
    }
}
