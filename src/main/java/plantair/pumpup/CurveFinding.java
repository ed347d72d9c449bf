package plantair.pumpup;

/**
 * A finding on a rise of pressure.
 *
 * @param code which
 * @param number what its code says
 */
public record CurveFinding(CurveCode code, double number) {}
