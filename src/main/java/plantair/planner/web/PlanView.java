package plantair.planner.web;

import java.util.List;

/**
 * A plan in words and in the units of a person.
 *
 * @param stop where the clock stops
 * @param volume net volume
 * @param rows bands by rising start pressure
 * @param advice recommended bands, for each way of treating the air
 * @param gains what better readings would buy in the band that is recommended while the air is not measured
 */
record PlanView(String stop, String volume, List<Row> rows, List<Advice> advice, List<Gain> gains) {

    /**
     * One band.
     *
     * @param start where the clock starts
     * @param elapsed how long it would run
     * @param tooHigh by how much the hand figure would be too high
     * @param perTest from test to test, air not measured
     * @param perTestSettled from test to test, settled reading
     * @param all of the flow itself, air not measured
     * @param allSettled of the flow itself, settled reading
     * @param recommended whether one of the recommended bands
     */
    record Row(
            String start,
            String elapsed,
            String tooHigh,
            String perTest,
            String perTestSettled,
            String all,
            String allSettled,
            boolean recommended) {}

    /**
     * One recommended band.
     *
     * @param air name of the treatment
     * @param reason name of the reason
     * @param figures start, stop, time, uncertainty from test to test and in all
     */
    record Advice(String air, String reason, List<String> figures) {}

    /**
     * What a change would buy.
     *
     * @param change name of the change
     * @param limit largest error of the gauge with that change, percent of span
     */
    record Gain(String change, String limit, String perTest, String all) {}
}
