package plantair.supply;

import plantair.pumpup.Efficiency;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;

/**
 * What a pressure above the lowest that is needed costs (S18): the power of a flow by the isentropic work of M17, and the use of
 * leaks and of everything without a regulator by the absolute pressure. About half a percent of power for each psi near 100
 * psig, as rules of thumb have it (from memory).
 *
 * <p>Checked by: StoredAirReferenceTests.
 *
 * @param power what is added to the power of a flow, as a part of it
 * @param use what is added to the use without a regulator, as a part of it
 */
public record BandEffect(double power, double use) {

    /**
     * The effect of the mean pressure of a band beside its lower end.
     *
     * @param band cut-out and cut-in; cut-in above zero
     */
    public static BandEffect of(StoredAir band) {
        return between(band.station(), band.low(), GaugePressure.mid(band.low(), band.high()));
    }

    /**
     * The effect of one pressure beside another.
     *
     * @param from above zero
     * @param to as high or higher
     * @throws IllegalArgumentException when outside these ranges
     */
    public static BandEffect between(AbsolutePressure station, GaugePressure from, GaugePressure to) {
        if (!(from.pascals() > 0 && to.pascals() >= from.pascals())) {
            throw new IllegalArgumentException("pressures must be positive and rise: " + from + ", " + to);
        }
        var flow = new FlowRate(1);
        double low = Efficiency.leastPower(flow, station, from.above(station)).watts();
        double high = Efficiency.leastPower(flow, station, to.above(station)).watts();
        return new BandEffect(
                high / low - 1,
                to.above(station).pascals() / from.above(station).pascals() - 1);
    }
}
