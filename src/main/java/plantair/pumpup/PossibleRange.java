package plantair.pumpup;

/** Bounds beyond which a reading cannot be true, in SI. Inside them {@link Plausibility} may still ask. Our own choice. */
public enum PossibleRange {
    /** Station pressure, Pa: from 5,000 m up to the deepest valley. */
    BAROMETER(50e3, 110e3),
    /** Gauge pressure of a receiver, Pa: vented, with a gauge that reads a little low, to the highest of plant air. */
    GAUGE_PRESSURE(-5e3, 10e6),
    /** Intake air, K. */
    INTAKE_TEMPERATURE(233, 333),
    /** Air in the receiver, K. */
    RECEIVER_AIR(233, 393),
    /** Time of one run or of waiting, s: up to a day. */
    ELAPSED(0.5, 86_400),
    /** Shaft speed, 1/min. */
    SPEED(10, 30_000);

    private final double lowest;
    private final double highest;

    PossibleRange(double lowest, double highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    /** True when the number can be true; NaN cannot. */
    public boolean contains(double si) {
        return si >= lowest && si <= highest;
    }

    /** The lowest possible, SI. */
    public double lowest() {
        return lowest;
    }

    /** The highest possible, SI. */
    public double highest() {
        return highest;
    }
}
