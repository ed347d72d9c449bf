package plantair.pumpup;

/** Whether an efficiency can be true. */
public enum Judgement {
    /** No reason to doubt it. */
    POSSIBLE,
    /** Better than machines of this kind are. */
    UNLIKELY,
    /** Against nature: a reading is wrong. */
    IMPOSSIBLE;

    /** The judgement of an efficiency that is unlikely above a limit and impossible above 1. */
    static Judgement of(double efficiency, double unlikelyAbove) {
        return efficiency > 1 ? IMPOSSIBLE : efficiency > unlikelyAbove ? UNLIKELY : POSSIBLE;
    }

    /** The worse of two. */
    Judgement worse(Judgement other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
