package plantair.testrecord.web;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.ToDoubleFunction;
import org.springframework.modulith.NamedInterface;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.equipment.Compressor;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.PossibleRange;
import plantair.pumpup.PumpUpMethods;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VolumeUnit;
import plantair.site.SiteFacts;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.RunEntry;
import plantair.testrecord.TestChecks;
import plantair.testrecord.TestConditions;
import plantair.testrecord.TestDraft;
import plantair.testrecord.VolumeCopy;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/** Reads a test form: either every reading is understood and possible, or each that is not has a message beside it. */
@Component
@NamedInterface("form")
public class TestFormReader {

    private static final int CLOCK_SLACK_S = 300;

    private final VolumeChoices volumes;
    private final InstrumentChoices instruments;
    private final HoldFromLeakTest holds;
    private final Clock clock;

    TestFormReader(VolumeChoices volumes, InstrumentChoices instruments, HoldFromLeakTest holds, Clock clock) {
        this.volumes = volumes;
        this.instruments = instruments;
        this.holds = holds;
        this.clock = clock;
    }

    /** The draft; empty when something was rejected. */
    public Optional<TestDraft> read(TestForm form, Compressor compressor, Errors errors) {
        var checks = new FieldChecks(errors);
        SiteFacts site = compressor.site().facts();
        Optional<Instant> performedAt = performedAt(form, site, checks, errors);
        Optional<String> tester = checks.text("tester", form.getTester(), 120, true);
        Optional<String> notes = checks.text("notes", form.getNotes(), 4000, false);
        Optional<UUID> submission = submission(form, errors);
        Optional<TestConditions> conditions = conditions(form, compressor, checks, errors);
        List<VolumeCopy> chosen = volumes.read(form, compressor, errors);
        if (conditions.isPresent()
                && VolumeCopy.isDrowned(chosen, conditions.get().water())
                && !chosen.isEmpty()) {
            errors.rejectValue("water.number", "test.drowned");
        }
        List<RunEntry> runs = runs(form, new RunReader(checks, errors));
        if (runs.size() > TestForm.MOST_RUNS) {
            errors.reject("test.tooManyRuns", new Object[] {TestForm.MOST_RUNS}, null);
        }
        LocalDate day =
                performedAt.orElse(clock.instant()).atZone(site.zoneId()).toLocalDate();
        List<InstrumentCopy> named = instruments.read(form, day, checks, errors);
        Optional<String> override = checks.text("overrideReason", form.getOverrideReason(), 1000, false);
        TestChecks around = new ChecksReader(checks, errors)
                .read(form.getChecks(), compressor.facts().plate());
        Long leakTest = holds.read(form.getChecks().getLeakTest(), around, chosen, compressor.id(), errors);
        if (errors.hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(new TestDraft(
                submission.orElseThrow(),
                compressor,
                performedAt.orElseThrow(),
                site.zone(),
                tester.orElseThrow(),
                conditions.orElseThrow(),
                chosen,
                compressor.facts().ratings(),
                runs,
                notes.orElse(""),
                "",
                PumpUpMethods.current().version(),
                around.withLeakTest(leakTest),
                named,
                override.orElse(null)));
    }

    private static Optional<UUID> submission(TestForm form, Errors errors) {
        try {
            return Optional.of(UUID.fromString(form.getSubmission()));
        } catch (IllegalArgumentException notOurs) {
            errors.reject("test.submission");
            return Optional.empty();
        }
    }

    private Optional<Instant> performedAt(TestForm form, SiteFacts site, FieldChecks checks, Errors errors) {
        Optional<LocalDate> date = checks.date("date", form.getDate(), true);
        Optional<LocalTime> time = checks.time("time", form.getTime(), true);
        if (date.isEmpty() || time.isEmpty()) {
            return Optional.empty();
        }
        Instant at = date.get().atTime(time.get()).atZone(site.zoneId()).toInstant();
        if (at.isAfter(clock.instant().plusSeconds(CLOCK_SLACK_S))) {
            errors.rejectValue("date", "test.future", new Object[] {form.getDate() + " " + form.getTime()}, null);
            return Optional.empty();
        }
        return Optional.of(at);
    }

    private static Optional<TestConditions> conditions(
            TestForm form, Compressor compressor, FieldChecks checks, Errors errors) {
        SiteFacts site = compressor.site().facts();
        Optional<AirTemperature> air = checks.choice("airTemperature", form.getAirTemperature(), AirTemperature.class);
        Optional<Entered> barometer = checks.optional("barometer", form.getBarometer(), PressureUnit.class);
        possible(
                barometer,
                "barometer",
                PossibleRange.BAROMETER,
                b -> AbsolutePressure.of(b).pascals(),
                errors);
        Optional<Entered> intake = temperature(form.getIntakeTemperature(), checks);
        possible(
                intake,
                "intakeTemperature",
                PossibleRange.INTAKE_TEMPERATURE,
                t -> Temperature.of(t).kelvin(),
                errors);
        Optional<Entered> humidity = checks.optional("intakeHumidity", form.getIntakeHumidity(), FixedUnit.PERCENT);
        if (humidity.isPresent()
                && !(humidity.get().value() >= 0 && humidity.get().value() <= 100)) {
            errors.rejectValue("intakeHumidity.number", "test.humidity");
        }
        Optional<Entered> water = checks.positive("water", checks.optional("water", form.getWater(), VolumeUnit.class));
        Optional<Entered> speed = checks.positive("speed", checks.optional("speed", form.getSpeed(), FixedUnit.RPM));
        possible(speed, "speed", PossibleRange.SPEED, n -> ShaftSpeed.of(n).perMinute(), errors);
        if (errors.hasErrors() || air.isEmpty() || intake.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TestConditions(
                site.elevation(),
                site.barometer(),
                barometer.orElse(null),
                intake.get(),
                humidity.orElse(null),
                air.get(),
                water.orElse(null),
                speed.orElse(null),
                compressor.facts().plate().ratedSpeed()));
    }

    private static Optional<Entered> temperature(EnteredField field, FieldChecks checks) {
        return checks.required("intakeTemperature", field, TemperatureUnit.class);
    }

    private static void possible(
            Optional<Entered> entered, String path, PossibleRange range, ToDoubleFunction<Entered> si, Errors errors) {
        if (entered.isPresent() && !RunReader.isPossible(entered.get(), range, si)) {
            errors.rejectValue(
                    path + ".number",
                    "range." + range.name(),
                    new Object[] {entered.get().toString()},
                    null);
        }
    }

    private static List<RunEntry> runs(TestForm form, RunReader reader) {
        List<RunEntry> runs = new ArrayList<>();
        boolean settled = AirTemperature.SETTLED.name().equals(form.getAirTemperature());
        boolean measured = AirTemperature.MEASURED.name().equals(form.getAirTemperature());
        for (int i = 0; i < form.getRuns().size(); i++) {
            RunForm run = form.getRuns().get(i);
            if (!run.isBlank() || i == 0) {
                reader.read("runs[" + i + "]", run, measured, settled).ifPresent(runs::add);
            }
        }
        return runs;
    }
}
