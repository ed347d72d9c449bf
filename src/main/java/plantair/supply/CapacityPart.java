package plantair.supply;

import java.util.List;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;

/**
 * What one compressor adds to the capacity of a site.
 *
 * @param label how the plant calls it
 * @param flow at the pressure of the site, zero or more
 * @param relativeRandom relative standard uncertainty that it shares with no other, zero or more
 * @param shared what it shares with others, each source once
 */
public record CapacityPart(String label, FlowRate flow, double relativeRandom, List<SharedPart> shared) {

    /** @throws IllegalArgumentException when outside the range of a parameter */
    public CapacityPart {
        shared = List.copyOf(shared);
        if (!(flow.cubicMetresPerSecond() >= 0 && relativeRandom >= 0 && relativeRandom <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("flow and uncertainty must not be negative: " + label);
        }
    }

    /** Its flow with its whole uncertainty. */
    public MeasuredFlow measured() {
        return new Capacity(List.of(this), FlowBasis.INTAKE).total();
    }

    double perSecond() {
        return flow.cubicMetresPerSecond();
    }
}
