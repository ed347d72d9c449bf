package plantair.supply;

/** How the size of a found leak was estimated, and how sure that is. Our own defaults, without a source. */
public enum SizedBy {
    /** A flow meter in the line. */
    METER(0.05),
    /** The time in which it fills a bag of known size. */
    BAG(0.1),
    /** The bore of the hole and the pressure behind it (S11); a hole is seldom round or sharp. */
    HOLE(0.3),
    /** The table of an ultrasonic leak detector. */
    ULTRASOUND(0.5),
    /** Heard and felt. */
    JUDGED(0.7);

    private final double relativeU;

    SizedBy(double relativeU) {
        this.relativeU = relativeU;
    }

    /** Relative standard uncertainty. */
    public double relativeU() {
        return relativeU;
    }
}
