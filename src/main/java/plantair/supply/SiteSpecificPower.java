package plantair.supply;

import java.util.List;
import plantair.pumpup.SpecificPower;
import plantair.quantity.FlowBasis;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Power;

/**
 * Specific power of several compressors together (S24): ΣP/Σq, so that a large one weighs more. Powers are taken as they were
 * read; the flows make it as unsure as their sum (S9).
 *
 * <p>Source: own. Checked by: SiteSpecificPowerTests.
 *
 * @param value power over flow
 * @param relativeU relative standard uncertainty
 */
public record SiteSpecificPower(SpecificPower value, double relativeU) {

    /**
     * That of these machines; of one alone its own.
     *
     * @param machines one or more
     * @throws IllegalArgumentException when there is none
     */
    public static SiteSpecificPower of(List<PoweredPart> machines) {
        if (machines.isEmpty()) {
            throw new IllegalArgumentException("no machine");
        }
        List<CapacityPart> parts = machines.stream().map(PoweredPart::part).toList();
        MeasuredFlow total = new Capacity(parts, FlowBasis.INTAKE).total();
        double watts = machines.stream().mapToDouble(one -> one.input().watts()).reduce(0, Double::sum);
        return new SiteSpecificPower(
                SpecificPower.of(new Power(watts), total.flow()),
                total.standardUncertainty().over(total.flow()));
    }
}
