package plantair.leaktest;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plantair.leak.LoadCycle;
import plantair.leak.ShutAir;
import plantair.leak.TwoReadings;
import plantair.pumpup.Station;
import plantair.pumpup.TimedPressure;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.PressureDifference;
import plantair.quantity.VesselVolume;
import plantair.testrecord.VolumeCopy;

/**
 * From what was typed to the quantities that the computations take. Computes nothing.
 *
 * @param test as it was typed
 */
record LeakReadings(LeakTestDraft test) {

    /** A typed uncertainty is taken as one of 95 %. */
    private static final double COVERAGE = 2;

    Station station() {
        return station(test.state());
    }

    static Station station(LeakState state) {
        return new Station(
                read(state.barometer(), AbsolutePressure::of),
                read(state.siteBarometer(), AbsolutePressure::of),
                read(state.siteElevation(), Length::of));
    }

    GaugePressure at() {
        return GaugePressure.of(test.state().atPressure());
    }

    List<LoadCycle> cycles() {
        return test.cycles().stream()
                .map(cycle ->
                        new LoadCycle(seconds(cycle.loaded()), seconds(cycle.unloaded()), seconds(cycle.standing())))
                .toList();
    }

    static double seconds(@Nullable Entered time) {
        return time == null ? 0 : FallReading.seconds(time);
    }

    ShutAir shut() {
        Entered volume = test.state().volume();
        if (volume == null) {
            return ShutAir.of(VolumeCopy.parts(test.volumes()));
        }
        Entered percent = Objects.requireNonNull(test.state().volumePercent());
        return new ShutAir(VesselVolume.of(volume), percent.part() / COVERAGE);
    }

    TwoReadings two() {
        FallReading first = test.readings().get(0);
        FallReading last = test.readings().get(1);
        return new TwoReadings(
                station().pressure(),
                GaugePressure.of(first.pressure()),
                GaugePressure.of(last.pressure()),
                Elapsed.of(last.atTime()));
    }

    double readingU() {
        return TwoReadings.readingU(
                PressureDifference.of(Objects.requireNonNull(test.state().division())));
    }

    List<TimedPressure> readings() {
        return test.readings().stream()
                .map(reading -> new TimedPressure(seconds(reading.atTime()), GaugePressure.of(reading.pressure())))
                .toList();
    }

    private static <Q> @Nullable Q read(@Nullable Entered entered, Function<Entered, Q> quantity) {
        return entered == null ? null : quantity.apply(entered);
    }
}
