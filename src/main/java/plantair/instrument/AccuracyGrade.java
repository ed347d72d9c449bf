package plantair.instrument;

/**
 * Grade or class on the dial of a pressure gauge. Of a grade with one limit for the first and last quarter of the scale
 * and another for the middle half, the largest counts. Limits from memory of ASME B40.100 and EN 837-1.
 */
public enum AccuracyGrade {
    /** ASME B40.100: 0.1 % of span. */
    ASME_4A(0.001),
    /** ASME B40.100: 0.25 % of span. */
    ASME_3A(0.0025),
    /** ASME B40.100: 0.5 % of span. */
    ASME_2A(0.005),
    /** ASME B40.100: 1 % of span. */
    ASME_1A(0.01),
    /** ASME B40.100: 2, 1, 2 % of span. */
    ASME_A(0.02),
    /** ASME B40.100: 3, 2, 3 % of span. */
    ASME_B(0.03),
    /** ASME B40.100: 4, 3, 4 % of span. */
    ASME_C(0.04),
    /** ASME B40.100: 5 % of span. */
    ASME_D(0.05),
    /** EN 837-1: 0.1 % of span. */
    EN_0_1(0.001),
    /** EN 837-1: 0.25 % of span. */
    EN_0_25(0.0025),
    /** EN 837-1: 0.6 % of span. */
    EN_0_6(0.006),
    /** EN 837-1: 1 % of span. */
    EN_1(0.01),
    /** EN 837-1: 1.6 % of span. */
    EN_1_6(0.016),
    /** EN 837-1: 2.5 % of span. */
    EN_2_5(0.025),
    /** EN 837-1: 4 % of span. */
    EN_4(0.04),
    /** None of these; the percent is typed. */
    OTHER(Double.NaN);

    private final double limitPart;

    AccuracyGrade(double limitPart) {
        this.limitPart = limitPart;
    }

    /** Largest error anywhere on the scale as a part of span, 0.01 for 1 %; NaN for {@link #OTHER}. */
    double limitPart() {
        return limitPart;
    }
}
