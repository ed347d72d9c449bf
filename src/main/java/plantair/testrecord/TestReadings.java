package plantair.testrecord;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plantair.equipment.RatingEntry;
import plantair.instrument.AsFound;
import plantair.pumpup.Circumstances;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.RatingPoint;
import plantair.pumpup.RunReadings;
import plantair.pumpup.Station;
import plantair.pumpup.VolumePart;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/** From what was typed to the quantities that the method takes. Computes nothing. */
final class TestReadings {

    private TestReadings() {}

    static PumpUpReadings of(PumpUpTest test) {
        return of(test, List.of());
    }

    /** The readings of a test whose gauge was found wrong by these errors. */
    static PumpUpReadings of(PumpUpTest test, List<AsFound> errors) {
        return of(
                test.conditions(),
                test.volumes(),
                test.runs(),
                test.ratings(),
                CircumstancesOf.of(
                        test.checks(),
                        test.instruments(),
                        errors,
                        test.learned() == null ? null : test.learned().factor()));
    }

    static PumpUpReadings of(TestDraft draft) {
        return of(
                draft.conditions(),
                draft.volumes(),
                draft.runs(),
                draft.ratings(),
                CircumstancesOf.of(draft.checks(), draft.instruments(), List.of(), null));
    }

    private static PumpUpReadings of(
            TestConditions conditions,
            List<VolumeCopy> volumes,
            List<RunEntry> runs,
            List<RatingEntry> ratings,
            Circumstances circumstances) {
        return new PumpUpReadings(
                volumeParts(volumes, conditions.water()),
                station(conditions),
                Temperature.of(conditions.intakeTemperature()),
                read(conditions.intakeHumidity(), RelativeHumidity::of),
                conditions.airTemperature(),
                runs.stream().map(TestReadings::run).toList(),
                read(conditions.speed(), ShaftSpeed::of),
                read(conditions.ratedSpeed(), ShaftSpeed::of),
                ratings.stream().map(TestReadings::rating).toList(),
                lowestMawp(volumes),
                circumstances);
    }

    static Station station(TestConditions conditions) {
        return new Station(
                read(conditions.barometer(), AbsolutePressure::of),
                read(conditions.siteBarometer(), AbsolutePressure::of),
                read(conditions.siteElevation(), Length::of));
    }

    static List<VolumePart> volumeParts(List<VolumeCopy> volumes, @Nullable Entered water) {
        List<VolumePart> parts = new ArrayList<>();
        volumes.forEach(copy -> parts.add(
                new VolumePart(copy.label(), copy.kind(), volume(copy), VolumeUncertainty.of(copy.knownBy()))));
        if (water != null) {
            parts.add(new VolumePart("", VolumePart.Kind.WATER, VesselVolume.of(water)));
        }
        return parts;
    }

    private static VesselVolume volume(VolumeCopy copy) {
        return copy.volume() != null
                ? VesselVolume.of(copy.volume())
                : VolumePart.ofPipe(
                        Length.of(Objects.requireNonNull(copy.length())),
                        Length.of(Objects.requireNonNull(copy.bore())));
    }

    private static RunReadings run(RunEntry run) {
        return new RunReadings(
                GaugePressure.of(run.startPressure()),
                GaugePressure.of(run.stopPressure()),
                Elapsed.of(run.elapsed()),
                read(run.startAir(), Temperature::of),
                read(run.stopAir(), Temperature::of),
                read(run.settledPressure(), GaugePressure::of),
                read(run.settledAir(), Temperature::of));
    }

    private static RatingPoint rating(RatingEntry rating) {
        return new RatingPoint(GaugePressure.of(rating.pressure()), FlowRate.of(rating.flow()), rating.basis());
    }

    private static @Nullable GaugePressure lowestMawp(List<VolumeCopy> volumes) {
        return volumes.stream()
                .map(VolumeCopy::mawp)
                .flatMap(mawp -> Optional.ofNullable(mawp).stream())
                .map(GaugePressure::of)
                .min(Comparator.comparingDouble(GaugePressure::pascals))
                .orElse(null);
    }

    private static <Q> @Nullable Q read(@Nullable Entered entered, Function<Entered, Q> quantity) {
        return entered == null ? null : quantity.apply(entered);
    }
}
