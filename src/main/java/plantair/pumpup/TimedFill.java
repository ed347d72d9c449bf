package plantair.pumpup;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.quantity.GaugePressure;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureDifference;

/**
 * A fill with many readings, beside the test that it belongs to: its volume, station and air are those of the test (S1 to S3,
 * S22, S23).
 *
 * @param rise the readings
 * @param readings of the test
 * @param air in the receiver during the fill; null where it was not read
 * @param gauge with what the rise was read; null when not known
 */
public record TimedFill(
        PressureRise rise,
        PumpUpReadings readings,
        @Nullable Air air,
        @Nullable GaugeAccuracy gauge) {

    /** More readings than this tell nothing more, and take long. */
    private static final int MOST = 2_000;

    /**
     * Air in the receiver, read at both ends of a fill.
     *
     * @param mean of both
     * @param warmed from the one to the other
     */
    public record Air(Temperature mean, TemperatureDifference warmed) {

        /** The mean of some runs; null unless each of them has both readings. */
        private static @Nullable Air of(List<RunReadings> runs) {
            double start = 0;
            double stop = 0;
            for (RunReadings run : runs) {
                if (run.startAir() == null || run.stopAir() == null) {
                    return null;
                }
                start += run.startAir().kelvin() / runs.size();
                stop += run.stopAir().kelvin() / runs.size();
            }
            return new Air(new Temperature((start + stop) / 2), new TemperatureDifference(stop - start));
        }
    }

    /**
     * The marks of one run of the test, read with the gauge of the test.
     *
     * @param run one of its runs
     * @param marks as the gauge showed them, start and stop among them
     */
    public static TimedFill ofRun(PumpUpReadings readings, RunReadings run, List<TimedPressure> marks) {
        return of(
                readings,
                marks,
                Air.of(List.of(run)),
                readings.circumstances().instruments().gauge());
    }

    /**
     * The readings of a logger. Which run of the test they show is not known, so that the air is that of all of them.
     *
     * @param log as the logger has them
     * @param logger null when nothing is known of it
     */
    public static TimedFill ofLog(PumpUpReadings readings, List<TimedPressure> log, @Nullable GaugeAccuracy logger) {
        return of(readings, log, Air.of(readings.runs()), logger);
    }

    private static TimedFill of(
            PumpUpReadings readings, List<TimedPressure> read, @Nullable Air air, @Nullable GaugeAccuracy gauge) {
        boolean errors = gauge != null && !gauge.errors().isEmpty();
        List<TimedPressure> corrected = gauge == null || !errors
                ? read
                : read.stream()
                        .map(point -> new TimedPressure(point.seconds(), gauge.corrected(point.pressure())))
                        .toList();
        return new TimedFill(PressureRise.of(corrected), readings, air, gauge);
    }

    private ShutVolume shut() {
        return new ShutVolume(
                readings.netVolume(), readings.intake(), air == null ? null : air.mean(), Compressibility.DRY_AIR);
    }

    /** The flow at a pressure, or why there is none. */
    public FlowAtPressure.Outcome at(GaugePressure pressure) {
        return FlowAtPressure.of(rise.averaged(MOST), shut(), pressure);
    }

    /** Flows at pressures of equal distance over the whole rise; without those where none can be told. */
    public List<FlowAtPressure> along(int count) {
        return FlowAtPressure.along(rise.averaged(MOST), shut(), count);
    }

    /** How sure the level of a flow of this fill is. */
    public CurveBudget budget(FlowAtPressure flow) {
        return CurveBudget.of(flow, this);
    }

    /** Where a fill begins its air warms fastest, and the shape is not that of the machine. */
    private boolean isAtFoot(FlowAtPressure flow) {
        double lowest =
                rise.points().stream().mapToDouble(TimedPressure::pascals).min().orElse(0);
        double share = flow.at().minus(flow.from()).pascals() / flow.window().pascals();
        return share < CurveChecks.EDGE
                && flow.from().pascals()
                        <= lowest + CurveChecks.EDGE * flow.window().pascals();
    }

    /**
     * The flow of the test carried to another pressure by the shape of this fill (S23).
     *
     * @param test the result of the test
     * @param at where it is wanted
     * @param points what the maker states, of which only what holds at that pressure is compared
     * @return empty when its runs were not averaged, the fill tells no flow at one of the two pressures, or that pressure is
     *     at the foot of the fill
     */
    public Optional<CarriedFlow> carried(PumpUpResult test, GaugePressure at, List<RatingPoint> points) {
        if (test.freeAir() == null) {
            return Optional.empty();
        }
        Optional<FlowAtPressure> here = at(at).flow().filter(flow -> !isAtFoot(flow));
        return at(test.midPressure())
                .flow()
                .flatMap(there -> here.map(flow -> CarriedFlow.of(this, test, flow, there))
                        .map(carried -> carried.beside(points, this, test)));
    }
}
