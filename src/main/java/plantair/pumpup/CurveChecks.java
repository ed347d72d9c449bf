package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import plantair.quantity.GaugePressure;

/** What is odd about a fitted curve (S2). Limits are ours. Checked by: FlowAtPressureTests. */
final class CurveChecks {

    private static final double TELLING = 3;
    static final double EDGE = 0.2;

    /** Below a millisecond the times follow the curve as well as any clock can tell. */
    private static final double EXACT_S = 1e-3;

    private static final double LEAST_U = 1e-300;

    private CurveChecks() {}

    static List<CurveFinding> of(TimeCurve curve, CurveWindow window, GaugePressure at, int degree) {
        List<CurveFinding> findings = new ArrayList<>();
        boolean rises = curve.slope() > TELLING * curve.uSlope()
                && curve.risesBetween(window.lowPa() - at.pascals(), window.highPa() - at.pascals());
        if (!rises) {
            findings.add(new CurveFinding(CurveCode.NOT_RISING, curve.slope() / Math.max(curve.uSlope(), LEAST_U)));
        }
        double share = window.shareBeyond(at);
        if (share < EDGE) {
            findings.add(new CurveFinding(CurveCode.NEAR_EDGE, share));
        }
        double bend = curve.scatter() > EXACT_S ? bend(window, at, degree) : 0;
        if (Math.abs(bend) > TELLING) {
            findings.add(new CurveFinding(CurveCode.BENDS, bend));
        }
        return findings;
    }

    /** The larger t of the next two terms: a bend in the middle of the window shows only in the even one. */
    private static double bend(CurveWindow window, GaugePressure at, int degree) {
        double largest = 0;
        for (int next = degree + 1; next <= degree + 2 && window.pressures() >= next + 2; next++) {
            double t = TimeCurve.fit(window.points(), at, next).lastTerm();
            largest = Math.abs(t) > Math.abs(largest) ? t : largest;
        }
        return largest;
    }
}
