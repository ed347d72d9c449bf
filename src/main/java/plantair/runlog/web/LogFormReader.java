package plantair.runlog.web;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.instrument.Calibrations;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.instrument.Instruments;
import plantair.quantity.PressureUnit;
import plantair.quantity.Unit;
import plantair.runlog.DecimalMark;
import plantair.runlog.LogChoices;
import plantair.runlog.LogText;
import plantair.runlog.PressureReference;
import plantair.runlog.Separator;
import plantair.runlog.TextCode;
import plantair.runlog.TimeFormat;
import plantair.testrecord.InstrumentCopy;
import plantair.web.FieldChecks;

/** Reads how a logger's file is read; what cannot be is rejected beside its field. */
@Component
final class LogFormReader {

    private static final int MOST_COLUMNS = 500;

    private final Instruments instruments;
    private final Calibrations calibrations;

    LogFormReader(Instruments instruments, Calibrations calibrations) {
        this.instruments = instruments;
        this.calibrations = calibrations;
    }

    /** The choices; empty when something was rejected. */
    Optional<LogChoices> choices(LogForm form, TextCode code, Errors errors) {
        var checks = new FieldChecks(errors);
        var separator = checks.choice("separator", form.getSeparator(), Separator.class);
        var mark = checks.choice("decimalMark", form.getDecimalMark(), DecimalMark.class);
        var skipped = checks.whole("skippedLines", form.getSkippedLines(), 0, LogText.MOST_LINES, true);
        var day = checks.whole("dayColumn", form.getDayColumn(), 1, MOST_COLUMNS, false);
        var time = checks.whole("timeColumn", form.getTimeColumn(), 1, MOST_COLUMNS, true);
        var format = checks.choice("timeFormat", form.getTimeFormat(), TimeFormat.class);
        var pressure = checks.whole("pressureColumn", form.getPressureColumn(), 1, MOST_COLUMNS, true);
        var reference = checks.choice("reference", form.getReference(), PressureReference.class);
        var unit = Unit.byCode(form.getPressureUnit()).filter(PressureUnit.class::isInstance);
        if (unit.isEmpty()) {
            errors.rejectValue("pressureUnit", "unit.unknown", new Object[] {form.getPressureUnit()}, "unit.unknown");
        }
        if (separator.equals(Optional.of(Separator.COMMA)) && mark.equals(Optional.of(DecimalMark.COMMA))) {
            errors.rejectValue("decimalMark", "log.commaTwice");
        }
        if (time.isPresent() && time.equals(pressure)) {
            errors.rejectValue("pressureColumn", "log.sameColumn");
        }
        if (day.isPresent() && format.isPresent() && !format.get().hasDay()) {
            errors.rejectValue("dayColumn", "log.dayWithoutFormat");
        }
        if (errors.hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(new LogChoices(
                code,
                separator.orElseThrow(),
                mark.orElseThrow(),
                skipped.orElseThrow(),
                form.getLeaveOut().equals("true"),
                day.orElse(null),
                time.orElseThrow(),
                format.orElseThrow(),
                pressure.orElseThrow(),
                unit.orElseThrow().code(),
                reference.orElseThrow()));
    }

    /** The key of the form, by which one sent twice counts once. */
    static Optional<UUID> submission(String typed, Errors errors) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notMadeByTheForm) {
            errors.reject("log.submission");
            return Optional.empty();
        }
    }

    /** What it was read with, as it stood on the day of the test; null when none was chosen. */
    @Nullable
    InstrumentCopy logger(LogForm form, LocalDate day, Errors errors) {
        Optional<Long> id = new FieldChecks(errors).id("logger", form.getLogger(), false);
        Optional<Instrument> found = id.flatMap(instruments::findById)
                .filter(instrument -> instrument.facts().kind() == InstrumentKind.GAUGE);
        if (id.isPresent() && found.isEmpty()) {
            errors.rejectValue("logger", "log.noSuchInstrument");
        }
        return found.map(instrument -> InstrumentCopy.of(
                        instrument,
                        calibrations.findLatest(instrument.id(), day).orElse(null),
                        day))
                .orElse(null);
    }
}
