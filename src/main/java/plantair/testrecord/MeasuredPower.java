package plantair.testrecord;

import java.util.List;
import plantair.pumpup.SpecificPower;
import plantair.quantity.Power;
import plantair.supply.CapacityPart;
import plantair.supply.PoweredPart;
import plantair.supply.SiteSpecificPower;

/**
 * What a compressor delivered and took in one and the same test.
 *
 * @param output what it delivered
 * @param input electric power into the motor, as read
 */
public record MeasuredPower(MeasuredOutput output, Power input) {

    /** Power over flow, at the pressure of the test. */
    public SpecificPower specificPower() {
        return SpecificPower.of(input, output.flow());
    }

    /** Relative standard uncertainty of the flow; the power is taken as it was read. */
    public double relativeU() {
        return SiteSpecificPower.of(List.of(part(""))).relativeU();
    }

    /**
     * The machine as one of several.
     *
     * @param label how the plant calls it
     */
    public PoweredPart part(String label) {
        return new PoweredPart(new CapacityPart(label, output.flow(), output.relativeRandom(), output.shared()), input);
    }
}
