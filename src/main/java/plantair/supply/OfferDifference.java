package plantair.supply;

import plantair.pumpup.RatingTolerance;

/**
 * One offer beside another, both at the site (S25). A machine may miss what was offered by the tolerance of its acceptance test
 * and still be as offered, so a difference within the larger of the two tolerances is none.
 *
 * <p>Source: own rule with the tolerances of ISO 1217 annex C (from memory). Checked by: OfferDifferenceTests.
 *
 * @param flow free air of the one over that of the other, less one
 * @param flowTolerance within which this is no difference
 * @param power specific power of the one over that of the other, less one; above zero where it takes more for the same air
 * @param powerTolerance within which this is no difference
 */
public record OfferDifference(double flow, double flowTolerance, double power, double powerTolerance) {

    /** The difference of one offer to another. */
    public static OfferDifference between(Offer.AtSite one, Offer.AtSite other) {
        return new OfferDifference(
                one.freeAir().over(other.freeAir()) - 1,
                Math.max(RatingTolerance.of(one.freeAir()), RatingTolerance.of(other.freeAir())),
                one.specificPower().joulesPerCubicMetre()
                                / other.specificPower().joulesPerCubicMetre()
                        - 1,
                Math.max(
                        RatingTolerance.ofSpecificPower(one.freeAir()),
                        RatingTolerance.ofSpecificPower(other.freeAir())));
    }

    /** Whether the flows differ by more than their tolerance. */
    public boolean isFlowTold() {
        return StrictMath.abs(flow) > flowTolerance;
    }

    /** Whether the specific powers do. */
    public boolean isPowerTold() {
        return StrictMath.abs(power) > powerTolerance;
    }
}
