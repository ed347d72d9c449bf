package plantair.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.function.Function;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorPlate;
import plantair.pumpup.VolumePart;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.Length;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.RunEntry;
import plantair.testrecord.TestChecks;
import plantair.testrecord.TestConditions;
import plantair.testrecord.TestDraft;
import plantair.testrecord.VolumeCopy;

/** All tests of one machine over the years. */
final class Campaign {

    private static final double WATER_GAL = 130;
    private static final int USUAL_RUNS = 3;
    private static final double SLIP = 0.004;
    private static final Instant COPYING = Instant.parse("2020-01-14T16:00:00Z");

    private final Machine machine;
    private final Compressor compressor;
    private final List<VolumeCopy> volumes;
    private final Function<LocalDate, List<InstrumentCopy>> gauges;
    private final double step;
    private final Random random;
    private int copied;

    Campaign(Machine machine, Compressor compressor, List<VolumeCopy> volumes) {
        this(machine, compressor, volumes, day -> GaugeCopies.of(machine, day), RunSimulation.FINE_STEP);
    }

    Campaign(
            Machine machine,
            Compressor compressor,
            List<VolumeCopy> volumes,
            Function<LocalDate, List<InstrumentCopy>> gauges,
            double step) {
        this.machine = machine;
        this.compressor = compressor;
        this.volumes = volumes;
        this.gauges = gauges;
        this.step = step;
        random = new Random(20_200_113L * machine.tag().hashCode());
    }

    List<DemoTest> tests(List<Occasion> occasions) {
        List<DemoTest> tests = new ArrayList<>();
        for (Occasion occasion : occasions) {
            DemoTest test = test(occasion);
            tests.add(test);
            if (occasion.trouble() == Occasion.Trouble.WATER) {
                tests.add(corrected(test));
            }
        }
        return tests;
    }

    private DemoTest test(Occasion occasion) {
        Weather weather = machine.climate().on(occasion.date(), random);
        Gauge gauge = machine.gauge().apply(occasion.date());
        double speed = machine.habits().readsSpeed() ? 1 + SLIP * random.nextGaussian() : 1;
        double flow = machine.flow() * machine.condition().applyAsDouble(occasion.date()) * speed;
        double volume = volume() - (occasion.trouble() == Occasion.Trouble.WATER ? water() : 0);
        List<RunEntry> runs = new ArrayList<>();
        double delivered = 0;
        int count = occasion.runs(USUAL_RUNS + (random.nextInt(4) == 0 ? 1 : 0));
        for (int run = 0; run < count; run++) {
            var simulation = new RunSimulation(
                    step, machine, gauge, weather, flow * occasion.runFactor(run), occasion.leak(), volume, random);
            RunSimulation.Seen seen = simulation.watch(Stories.hasLaps(machine.tag(), occasion));
            runs.add(seen.entry());
            delivered += seen.trueFlow() / count;
        }
        String tester = machine.habits().tester(random);
        String note = occasion.note().isEmpty() ? machine.habits().note(random) : occasion.note();
        CompressorPlate plate = compressor.facts().plate();
        TestChecks checks = Stories.hasHold(machine.tag(), occasion)
                ? HoldSimulation.watch(machine, gauge, weather, plate, flow, occasion.leak(), volume)
                : TestChecks.of(plate);
        if (Stories.hasMeter(machine.tag(), occasion)) {
            checks = Meter.read(checks, plate, occasion.date());
        }
        TestDraft draft = draft(
                id(occasion.date() + " first"),
                at(occasion),
                tester,
                conditions(weather, speed),
                runs,
                note,
                checks,
                gauges.apply(occasion.date()));
        Instant recorded = recorded(draft.performedAt());
        return new DemoTest(draft, recorded, occasion.trouble(), delivered, null);
    }

    /** Within two hours; what is older than the registers was copied from the log book, one every few minutes. */
    private Instant recorded(Instant performedAt) {
        Instant usual = performedAt.plus(25 + random.nextInt(90), ChronoUnit.MINUTES);
        if (!usual.isBefore(COPYING)) {
            return usual;
        }
        copied++;
        return COPYING.plus(4L * copied, ChronoUnit.MINUTES);
    }

    private Instant at(Occasion occasion) {
        return occasion.date()
                .atTime(6 + random.nextInt(8), 5 * random.nextInt(12))
                .atZone(compressor.site().facts().zoneId())
                .toInstant();
    }

    private UUID id(String what) {
        return UUID.nameUUIDFromBytes(("demo plant, " + machine.tag() + ", " + what).getBytes(StandardCharsets.UTF_8));
    }

    private TestConditions conditions(Weather weather, double speed) {
        var site = compressor.site().facts();
        Machine.Habits habits = machine.habits();
        Entered ratedSpeed = compressor.facts().plate().ratedSpeed();
        return new TestConditions(
                site.elevation(),
                site.barometer(),
                habits.readsWeather() ? barometer(weather) : null,
                RunSimulation.temperature(weather.kelvin() + 0.3 * random.nextGaussian(), habits.metric()),
                habits.readsWeather()
                        ? new Entered(Rounded.places(100 * weather.humidity(), 0), FixedUnit.PERCENT)
                        : null,
                machine.treatment(),
                null,
                habits.readsSpeed() && ratedSpeed != null
                        ? new Entered(Rounded.places(ratedSpeed.value() * speed, 0), FixedUnit.RPM)
                        : null,
                ratedSpeed);
    }

    private Entered barometer(Weather weather) {
        PressureUnit unit = machine.habits().metric() ? PressureUnit.HPA : PressureUnit.IN_HG;
        double shown = new AbsolutePressure(weather.pascals()).in(unit);
        return new Entered(Rounded.places(shown, unit == PressureUnit.HPA ? 0 : 2), unit);
    }

    private TestDraft draft(
            UUID submission,
            Instant at,
            String tester,
            TestConditions conditions,
            List<RunEntry> runs,
            String note,
            TestChecks checks,
            List<InstrumentCopy> gauges) {
        var site = compressor.site().facts();
        var ratings = compressor.facts().ratings();
        boolean overdue = gauges.stream().anyMatch(InstrumentCopy::isPastItsDate);
        return new TestDraft(
                submission,
                compressor,
                at,
                site.zone(),
                tester,
                conditions,
                volumes,
                ratings,
                runs,
                note,
                "",
                "PU-1",
                checks,
                gauges,
                overdue ? Stories.OVERDUE_REASON : null);
    }

    /** The same readings once more, with the water that was found later. */
    private DemoTest corrected(DemoTest wet) {
        TestDraft draft = wet.draft();
        TestConditions c = draft.conditions();
        var conditions = new TestConditions(
                c.siteElevation(),
                c.siteBarometer(),
                c.barometer(),
                c.intakeTemperature(),
                c.intakeHumidity(),
                c.airTemperature(),
                new Entered(Rounded.places(WATER_GAL, 0), VolumeUnit.US_GAL),
                c.speed(),
                c.ratedSpeed());
        String note = draft.notes() + " Later: " + Stories.WATER_FOUND;
        TestDraft again = draft(
                id("dry"),
                draft.performedAt(),
                draft.tester(),
                conditions,
                draft.runs(),
                note,
                draft.checks(),
                draft.instruments());
        Instant recorded = wet.recordedAt().plus(6, ChronoUnit.DAYS);
        var correction = new DemoTest.Correction(draft.submission(), Stories.WATER_REASON);
        return new DemoTest(again, recorded, Occasion.Trouble.NONE, wet.trueFlow(), correction);
    }

    private static double water() {
        return VesselVolume.of(WATER_GAL, VolumeUnit.US_GAL).cubicMetres();
    }

    private double volume() {
        double plates = volumes.stream()
                .mapToDouble(copy -> copy.volume() != null
                        ? VesselVolume.of(copy.volume()).cubicMetres()
                        : VolumePart.ofPipe(Length.of(copy.length()), Length.of(copy.bore()))
                                .cubicMetres())
                .sum();
        return plates * machine.trueVolume();
    }
}
