package plantair.leak;

import java.util.List;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;

/**
 * Share of its capacity that a compressor delivers while nothing but leaks takes air (S4): f = ΣT/Σ(T + t), T loaded, t
 * unloaded or standing, summed over whole cycles. Time standing counts with time unloaded: counted with the loaded time it
 * would double the leak.
 *
 * <p>Its uncertainty from the scatter between cycles, as that of a ratio: e_i = T_i − f (T_i + t_i),
 * u² = Σe²/(n (n − 1) c²) with c the mean cycle, and 0.10 s of the hand on each time. One cycle has no scatter; a fifth of the
 * share stands in for it, our own default.
 *
 * <p>Source: leakage test of the US Department of Energy's sourcebook on compressed air and of the energy-audit guide of the
 * Bureau of Energy Efficiency, India (formula read in copies); ratio estimate as in any text on sampling; the time by hand
 * from Am. J. Phys. 87, 110 (2019). Checked by: LoadShareTests.
 *
 * @param share f, between 0 and 1
 * @param u its standard uncertainty, above zero
 * @param cycles number of cycles, one or more
 */
public record LoadShare(double share, double u, int cycles) {

    /** Fewer cycles than these scatter too little to be believed; common practice, no source. */
    public static final int ENOUGH_CYCLES = 5;

    private static final double ONE_CYCLE_U = 0.2;
    private static final double HAND_S = 0.10;

    /**
     * The share over some cycles.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static LoadShare of(List<LoadCycle> cycles) {
        int n = cycles.size();
        if (n == 0) {
            throw new IllegalArgumentException("cycles must hold at least one");
        }
        double loaded = 0;
        double whole = 0;
        for (LoadCycle cycle : cycles) {
            loaded += cycle.loadSeconds();
            whole += cycle.seconds();
        }
        double share = loaded / whole;
        double squares = 0;
        for (LoadCycle cycle : cycles) {
            double off = cycle.loadSeconds() - share * cycle.seconds();
            squares += off * off;
        }
        double mean = whole / n;
        double scatter = n == 1 ? ONE_CYCLE_U * share : StrictMath.sqrt(squares / n / (n - 1)) / mean;
        double hand = HAND_S / mean * StrictMath.sqrt(((1 - share) * (1 - share) + share * share) / n);
        return new LoadShare(share, StrictMath.sqrt(scatter * scatter + hand * hand), n);
    }

    /** Whether there are enough cycles to believe their scatter. */
    public boolean isEnough() {
        return cycles >= ENOUGH_CYCLES;
    }

    /**
     * The leak (S5): share times capacity, on the basis of the capacity and at the pressure of the cycles.
     *
     * @param capacity what the compressor delivers at that pressure, best of all measured
     */
    public MeasuredFlow leak(MeasuredFlow capacity) {
        double byShare = u * capacity.flow().cubicMetresPerSecond();
        double byCapacity = share * capacity.standardUncertainty().cubicMetresPerSecond();
        return new MeasuredFlow(
                capacity.flow().times(share),
                new FlowRate(StrictMath.sqrt(byShare * byShare + byCapacity * byCapacity)),
                capacity.basis());
    }
}
