package plantair.testrecord.web;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.springframework.validation.Errors;
import plantair.pumpup.PossibleRange;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.Unit;
import plantair.testrecord.Laps;
import plantair.testrecord.RunEntry;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/** Reads one run of a test form. */
final class RunReader {

    private final FieldChecks checks;
    private final Errors errors;

    RunReader(FieldChecks checks, Errors errors) {
        this.checks = checks;
        this.errors = errors;
    }

    /** The run; empty when something was rejected. */
    Optional<RunEntry> read(String path, RunForm run, boolean measured, boolean settled) {
        Optional<Entered> start = pressure(path + ".startPressure", run.getStartPressure(), true);
        Optional<Entered> stop = pressure(path + ".stopPressure", run.getStopPressure(), true);
        Optional<Entered> elapsed = elapsed(path + ".elapsed", run.getElapsed(), true);
        Optional<Entered> startAir = air(path + ".startAir", run.getStartAir(), measured);
        Optional<Entered> stopAir = air(path + ".stopAir", run.getStopAir(), measured);
        Optional<Entered> settledPressure = pressure(path + ".settledPressure", run.getSettledPressure(), settled);
        Optional<Entered> settledAir = air(path + ".settledAir", run.getSettledAir(), settled);
        Optional<Entered> settledWait = elapsed(path + ".settledWait", run.getSettledWait(), false);
        above(path + ".stopPressure", stop, start, "test.stopNotAboveStart");
        above(path + ".settledPressure", settledPressure, start, "test.settledNotAboveStart");
        Optional<Laps> laps = new LapsReader(errors).read(path + ".laps", run.getLaps());
        if (start.isEmpty() || stop.isEmpty() || elapsed.isEmpty()) {
            return Optional.empty();
        }
        laps.filter(marks -> !LapsReader.rise(start.get(), marks, stop.get(), elapsed.get()))
                .ifPresent(marks -> errors.rejectValue(path + ".laps", "test.lapsDoNotRise"));
        return Optional.of(new RunEntry(
                start.get(),
                stop.get(),
                elapsed.get(),
                startAir.orElse(null),
                stopAir.orElse(null),
                settledPressure.orElse(null),
                settledAir.orElse(null),
                settledWait.orElse(null),
                laps.orElse(null)));
    }

    static boolean isPossible(Entered entered, PossibleRange range, ToDoubleFunction<Entered> si) {
        try {
            return range.contains(si.applyAsDouble(entered));
        } catch (IllegalArgumentException belowZero) {
            return false;
        }
    }

    private Optional<Entered> pressure(String path, EnteredField field, boolean required) {
        return possible(
                path,
                entered(path, field, PressureUnit.class, required),
                PossibleRange.GAUGE_PRESSURE,
                entered -> GaugePressure.of(entered).pascals());
    }

    private Optional<Entered> elapsed(String path, EnteredField field, boolean required) {
        return possible(
                path,
                checks.positive(path, entered(path, field, DurationUnit.class, required)),
                PossibleRange.ELAPSED,
                entered -> Elapsed.of(entered).seconds());
    }

    private Optional<Entered> air(String path, EnteredField field, boolean required) {
        return possible(
                path,
                entered(path, field, TemperatureUnit.class, required),
                PossibleRange.RECEIVER_AIR,
                entered -> Temperature.of(entered).kelvin());
    }

    private Optional<Entered> entered(String path, EnteredField field, Class<? extends Unit> kind, boolean required) {
        return required ? checks.required(path, field, kind) : checks.optional(path, field, kind);
    }

    private Optional<Entered> possible(
            String path, Optional<Entered> entered, PossibleRange range, ToDoubleFunction<Entered> si) {
        if (entered.isPresent() && !isPossible(entered.get(), range, si)) {
            errors.rejectValue(
                    path + ".number",
                    "range." + range.name(),
                    new Object[] {entered.get().toString()},
                    null);
            return Optional.empty();
        }
        return entered;
    }

    private void above(String path, Optional<Entered> upper, Optional<Entered> lower, String code) {
        if (upper.isPresent()
                && lower.isPresent()
                && !(GaugePressure.of(upper.get()).pascals()
                        > GaugePressure.of(lower.get()).pascals())) {
            Object[] both = {upper.get().toString(), lower.get().toString()};
            errors.rejectValue(path + ".number", code, both, null);
        }
    }
}
