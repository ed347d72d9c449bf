package plantair.instrument;

import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;

/**
 * Grade or class on the dial of a pressure gauge. Of a grade with one limit for the first and last quarter of the scale
 * and another for the middle half, the largest counts. Limits from memory of ASME B40.100 and EN 837-1.
 */
public enum AccuracyGrade {
    /** ASME B40.100: 0.1 % of span. */
    ASME_4A("0.1"),
    /** ASME B40.100: 0.25 % of span. */
    ASME_3A("0.25"),
    /** ASME B40.100: 0.5 % of span. */
    ASME_2A("0.5"),
    /** ASME B40.100: 1 % of span. */
    ASME_1A("1"),
    /** ASME B40.100: 2, 1, 2 % of span. */
    ASME_A("2"),
    /** ASME B40.100: 3, 2, 3 % of span. */
    ASME_B("3"),
    /** ASME B40.100: 4, 3, 4 % of span. */
    ASME_C("4"),
    /** ASME B40.100: 5 % of span. */
    ASME_D("5"),
    /** EN 837-1: 0.1 % of span. */
    EN_0_1("0.1"),
    /** EN 837-1: 0.25 % of span. */
    EN_0_25("0.25"),
    /** EN 837-1: 0.6 % of span. */
    EN_0_6("0.6"),
    /** EN 837-1: 1 % of span. */
    EN_1("1"),
    /** EN 837-1: 1.6 % of span. */
    EN_1_6("1.6"),
    /** EN 837-1: 2.5 % of span. */
    EN_2_5("2.5"),
    /** EN 837-1: 4 % of span. */
    EN_4("4"),
    /** None of these; the percent is typed. */
    OTHER("");

    private final String percent;

    AccuracyGrade(String percent) {
        this.percent = percent;
    }

    /** Largest error anywhere on the scale in percent of span; not for {@link #OTHER}. */
    public Entered percent() {
        return new Entered(percent, FixedUnit.PERCENT);
    }
}
