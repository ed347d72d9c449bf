package plantair.supply;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;

/**
 * Measured capacity of a site (S9): Q = Σq_i. What each machine has alone adds in squares; what they share adds straight
 * before it is squared: u² = Σ(q_i r_i)² + Σ_k(Σ_i q_i s_ik)². Two machines tested with one gauge are both wrong by it.
 *
 * <p>Source: JCGM 100:2008, 5.2 (from memory). Checked by: SupplyAndDemandTests.
 *
 * @param parts the machines that run, all flows at one pressure
 * @param basis of all of them
 */
public record Capacity(List<CapacityPart> parts, FlowBasis basis) {

    /** Keeps a copy. */
    public Capacity {
        parts = List.copyOf(parts);
    }

    /** The sum; zero without machines. */
    public MeasuredFlow total() {
        double sum = 0;
        double squares = 0;
        Map<String, Double> shared = new TreeMap<>();
        for (CapacityPart part : parts) {
            sum += part.perSecond();
            double alone = part.perSecond() * part.relativeRandom();
            squares += alone * alone;
            for (SharedPart one : part.shared()) {
                shared.merge(one.source(), part.perSecond() * one.relative(), Double::sum);
            }
        }
        for (double together : shared.values()) {
            squares += together * together;
        }
        return new MeasuredFlow(new FlowRate(sum), new FlowRate(StrictMath.sqrt(squares)), basis);
    }

    /** What is left of it after leaks, which count as independent of it. */
    public MeasuredFlow less(MeasuredFlow leaks) {
        MeasuredFlow total = total();
        double net = total.flow().cubicMetresPerSecond() - leaks.flow().cubicMetresPerSecond();
        double alone = total.standardUncertainty().cubicMetresPerSecond();
        double lost = leaks.standardUncertainty().cubicMetresPerSecond();
        return new MeasuredFlow(new FlowRate(net), new FlowRate(StrictMath.sqrt(alone * alone + lost * lost)), basis);
    }

    /** Its largest machine, the first of equals; empty without machines. */
    public Optional<CapacityPart> largest() {
        return parts.stream().reduce((one, other) -> other.perSecond() > one.perSecond() ? other : one);
    }

    /** The same without its largest machine; without the first of equals. */
    public Capacity withoutLargest() {
        int out = largest().map(parts::indexOf).orElse(-1);
        return new Capacity(
                IntStream.range(0, parts.size())
                        .filter(i -> i != out)
                        .mapToObj(parts::get)
                        .toList(),
                basis);
    }
}
