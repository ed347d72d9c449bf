package plantair.supply;

import java.util.OptionalDouble;
import plantair.quantity.FlowRate;
import plantair.statistics.Conformity;

/**
 * Supply less need, and what its uncertainty lets be said (S14): enough where the probability of a margin above zero is 0.95
 * or more, not enough where it is 0.05 or less.
 *
 * <p>Source: JCGM 106:2012, 7.3 (from memory). Checked by: SupplyAndDemandTests.
 *
 * @param supply capacity less leaks
 * @param need what is to be fed
 * @param margin supply less need; below zero where air is short
 * @param u its standard uncertainty
 * @param part margin over need
 * @param probability that the true margin is above zero
 * @param verdict what can be said
 */
public record Margin(
        FlowRate supply, FlowRate need, FlowRate margin, FlowRate u, double part, double probability, Verdict verdict) {

    /** What can be said. */
    public enum Verdict {
        /** There is enough. */
        ENOUGH,
        /** There is not. */
        NOT_ENOUGH,
        /** The uncertainty is too large for either. */
        CANNOT_BE_TOLD
    }

    /**
     * The margin.
     *
     * @param supply capacity less leaks
     * @param need above zero
     * @param u standard uncertainty of the margin, zero or more
     */
    static Margin of(FlowRate supply, FlowRate need, FlowRate u) {
        double margin = supply.cubicMetresPerSecond() - need.cubicMetresPerSecond();
        double probability = probability(margin, u.cubicMetresPerSecond());
        double part = margin / need.cubicMetresPerSecond();
        return new Margin(supply, need, new FlowRate(margin), u, part, probability, verdict(probability));
    }

    /**
     * What can be said of a margin of any kind.
     *
     * @param u its standard uncertainty in the same unit, zero or more
     */
    static Verdict verdict(double margin, double u) {
        return verdict(probability(margin, u));
    }

    private static Verdict verdict(double probability) {
        return probability >= Conformity.SURE
                ? Verdict.ENOUGH
                : probability <= 1 - Conformity.SURE ? Verdict.NOT_ENOUGH : Verdict.CANNOT_BE_TOLD;
    }

    private static double probability(double margin, double u) {
        if (u > 0) {
            return Conformity.probabilityAbove(margin, u, 0);
        }
        return margin >= 0 ? 1 : 0;
    }

    /** Need as a part of the supply; empty where nothing is left of the supply. */
    public OptionalDouble load() {
        return supply.cubicMetresPerSecond() > 0 ? OptionalDouble.of(need.over(supply)) : OptionalDouble.empty();
    }

    /** Standard uncertainty of the margin that would settle it; zero where it stands at zero. */
    public FlowRate settledBy() {
        return new FlowRate(Conformity.settlingUncertainty(margin.cubicMetresPerSecond(), 0));
    }
}
