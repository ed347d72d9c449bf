package plantair.supply;

import org.jspecify.annotations.Nullable;
import plantair.pumpup.SpecificPower;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.PowerUnit;

/**
 * What a flow of free air costs (S19, S20): power = specific power × flow, energy = power × hours, money = energy × tariff.
 *
 * <p>For leaks it is what they cost where the power falls with the output. A machine at fixed speed that only idles longer once
 * they are mended saves less: {@link #ofWhatIdles}.
 *
 * <p>Source: common practice. Checked by: AirPriceTests.
 *
 * @param specificPower of the machine or the site, on the basis of the flows
 * @param relativeU its relative standard uncertainty, zero or more
 * @param hours in a year in which the flow is made, from 0 to 8784
 * @param tariff money for a kilowatt hour, above zero; null when not known
 */
public record AirPrice(
        SpecificPower specificPower,
        double relativeU,
        double hours,
        @Nullable Double tariff) {

    private static final double MOST_HOURS = 8784;
    private static final double HUNDRED = 100;

    /** @throws IllegalArgumentException when outside the range of a parameter */
    public AirPrice {
        boolean inRange = relativeU >= 0 && relativeU <= Double.MAX_VALUE && hours >= 0 && hours <= MOST_HOURS;
        if (!inRange || (tariff != null && !(tariff > 0 && tariff <= Double.MAX_VALUE))) {
            throw new IllegalArgumentException("no price: " + relativeU + ", " + hours + " h, " + tariff);
        }
    }

    /**
     * The cost of a flow.
     *
     * @param flow zero or more
     */
    public YearlyCost of(MeasuredFlow flow) {
        double kilowatts = specificPower.forFlow(flow.flow()).in(PowerUnit.KW);
        double of = flow.flow().cubicMetresPerSecond();
        double part = of > 0 ? flow.standardUncertainty().cubicMetresPerSecond() / of : 0;
        double energy = kilowatts * hours;
        return new YearlyCost(
                kilowatts,
                energy,
                tariff == null ? null : energy * tariff,
                StrictMath.sqrt(part * part + relativeU * relativeU));
    }

    /**
     * What is saved where a flow becomes less; the two count as independent.
     *
     * @param after not above before, on the same basis
     * @throws IllegalArgumentException when it is
     */
    public YearlyCost saved(MeasuredFlow before, MeasuredFlow after) {
        double less = before.flow().cubicMetresPerSecond() - after.flow().cubicMetresPerSecond();
        if (!(less >= 0) || before.basis() != after.basis()) {
            throw new IllegalArgumentException("nothing saved: " + before + ", " + after);
        }
        double one = before.standardUncertainty().cubicMetresPerSecond();
        double other = after.standardUncertainty().cubicMetresPerSecond();
        var u = new FlowRate(StrictMath.sqrt(one * one + other * other));
        return of(new MeasuredFlow(new FlowRate(less), u, before.basis()));
    }

    /**
     * The price of what is saved at a machine that, with less to do, only idles longer: (1 − i) of the full one.
     *
     * @param idlePart power while unloaded over power while loaded, from 0 to below 1; 0.2 to 0.35 is common, no source
     */
    public AirPrice ofWhatIdles(double idlePart) {
        if (!(idlePart >= 0 && idlePart < 1)) {
            throw new IllegalArgumentException("idlePart must be at least 0 and below 1: " + idlePart);
        }
        var less = new SpecificPower(specificPower.joulesPerCubicMetre() * (1 - idlePart));
        return new AirPrice(less, relativeU, hours, tariff);
    }

    /** The cost of 100 cfm. */
    public YearlyCost perHundredCfm() {
        return exactly(FlowRate.of(HUNDRED, FlowUnit.CFM));
    }

    /** The cost of 1 m³/min. */
    public YearlyCost perCubicMetrePerMinute() {
        return exactly(FlowRate.of(1, FlowUnit.CUBIC_METRE_PER_MINUTE));
    }

    private YearlyCost exactly(FlowRate flow) {
        return of(new MeasuredFlow(flow, new FlowRate(0), FlowBasis.INTAKE));
    }
}
