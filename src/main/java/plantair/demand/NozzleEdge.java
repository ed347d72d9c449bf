package plantair.demand;

import plantair.supply.ChokedNozzle;

/** How air enters a nozzle or hole. */
public enum NozzleEdge {
    /** Well rounded. */
    ROUNDED(ChokedNozzle.ROUNDED),
    /** Sharp-edged: a drilled hole, a cut pipe. */
    SHARP(ChokedNozzle.SHARP);

    private final double coefficient;

    NozzleEdge(double coefficient) {
        this.coefficient = coefficient;
    }

    /** Its coefficient of discharge (S11). */
    public double coefficient() {
        return coefficient;
    }
}
