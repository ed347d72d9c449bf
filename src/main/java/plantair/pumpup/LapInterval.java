package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.VesselVolume;

/**
 * One piece of a run between two gauge marks, with its free air by the hand method (M1). It shows whether the flow bends
 * within a run; it has no uncertainty of its own, and what a short piece shows is mostly the reading of the marks.
 *
 * @param from gauge pressure at its start
 * @param to gauge pressure at its end, above the start
 * @param elapsed time between them
 * @param byHand free air at intake conditions, M1
 */
public record LapInterval(GaugePressure from, GaugePressure to, Elapsed elapsed, FlowRate byHand) {

    /**
     * A mark passed in a run.
     *
     * @param pressure gauge pressure
     * @param at time from the start of the run
     */
    public record Mark(GaugePressure pressure, Elapsed at) {}

    /**
     * The pieces between the start of a run, its marks and its stop.
     *
     * @param start gauge pressure at the start of the clock
     * @param marks those on the way and, last, the stop; pressures and times rise
     * @throws IllegalArgumentException when a time or a pressure does not rise
     */
    public static List<LapInterval> of(
            VesselVolume volume, AbsolutePressure station, GaugePressure start, List<Mark> marks) {
        List<LapInterval> pieces = new ArrayList<>();
        GaugePressure from = start;
        double since = 0;
        for (Mark mark : marks) {
            if (!(mark.at().seconds() > since) || !(mark.pressure().pascals() > from.pascals())) {
                throw new IllegalArgumentException("marks must rise: " + marks);
            }
            var elapsed = new Elapsed(mark.at().seconds() - since);
            FlowRate flow = FreeAir.byHand(volume, mark.pressure().minus(from), station, elapsed);
            pieces.add(new LapInterval(from, mark.pressure(), elapsed, flow));
            from = mark.pressure();
            since = mark.at().seconds();
        }
        return List.copyOf(pieces);
    }
}
