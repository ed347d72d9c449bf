package plantair.pumpup;

/**
 * One thing that alone would explain a result.
 *
 * @param cause what would have to be wrong
 * @param by how far, above zero; a volume, a pressure difference, a temperature difference, a flow or a time
 */
public record Explanation(Cause cause, Figure by) {

    /** What would have to be wrong. The first five explain a flow that is too high, the others one that is too low. */
    public enum Cause {
        /** Net volume less than stated: water in the receiver, a piece that was shut off, a wrong plate. */
        LESS_VOLUME,
        /** Stop pressure truly lower against the start than the gauge said; with a settled reading, the settled one. */
        GAUGE_HIGH,
        /** Receiver air warmer at the end than was read. */
        AIR_WARMER,
        /** Air not measured, and warmer at the end than the intake by so much; in place of the warming model. */
        AIR_ABOVE_INTAKE,
        /** Every run truly longer than the clock said. */
        CLOCK_SHORT,
        /** Net volume more than stated: a pipe, a cooler, a second receiver that stood open. */
        MORE_VOLUME,
        /** Stop pressure truly higher against the start than the gauge said. */
        GAUGE_LOW,
        /** Receiver air cooler at the end than was read. */
        AIR_COOLER,
        /** Every run truly shorter than the clock said. */
        CLOCK_LONG,
        /** So much free air was lost from the test volume while it was filled. */
        LEAK
    }
}
