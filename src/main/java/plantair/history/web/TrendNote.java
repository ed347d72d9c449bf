package plantair.history.web;

/** What may stand beside the word for a trend; its sentence is message {@code history.note.CODE}. */
enum TrendNote {
    /** Faster declines than this are ruled out. */
    RULED_OUT,
    /** The smallest decline that such tests would show. */
    DETECTABLE,
    /** The tests scatter more than they say. */
    SCATTER,
    /** The order of the tests alone tells the same. */
    RANKS_AGREE,
    /** It does not: few tests carry the result. */
    RANKS_DISAGREE,
    /** The line has another slope since a recorded event. */
    SLOPE_SINCE,
    /** Neighbouring tests err alike. */
    NEIGHBOURS_ALIKE,
    /** Tests at another pressure are left out. */
    OTHER_PRESSURE,
    /** Another gauge, or other marks on it. */
    SOURCE_GAUGE,
    /** Other receivers or pipes. */
    SOURCE_VOLUME,
    /** Another thermometer. */
    SOURCE_THERMOMETER,
    /** Another way of treating the receiver air. */
    SOURCE_METHOD,
    /** Tests brought to the pressure of the baseline. */
    SOURCE_PRESSURE
}
