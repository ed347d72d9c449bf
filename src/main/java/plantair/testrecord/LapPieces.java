package plantair.testrecord;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import plantair.pumpup.LapInterval;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.quantity.VesselVolume;

/** The pieces of those runs of a test that have marks on the way. */
public final class LapPieces {

    private LapPieces() {}

    /**
     * The pieces of one run.
     *
     * @param run number of the run, from 1
     * @param pieces in their order
     */
    public record OfRun(int run, List<LapInterval> pieces) {}

    /** Of each run with marks; empty when there is none. */
    public static List<OfRun> of(PumpUpTest test) {
        VesselVolume volume = TestReadings.of(test).netVolume();
        AbsolutePressure station = TestReadings.station(test.conditions()).pressure();
        List<OfRun> runs = new ArrayList<>();
        for (int i = 0; i < test.runs().size(); i++) {
            RunEntry run = test.runs().get(i);
            Laps laps = run.laps();
            if (laps != null) {
                var marks = Stream.concat(laps.marks().stream(), Stream.of(new Lap(run.stopPressure(), run.elapsed())))
                        .map(lap -> new LapInterval.Mark(GaugePressure.of(lap.pressure()), Elapsed.of(lap.at())))
                        .toList();
                runs.add(new OfRun(
                        i + 1, LapInterval.of(volume, station, GaugePressure.of(run.startPressure()), marks)));
            }
        }
        return List.copyOf(runs);
    }
}
