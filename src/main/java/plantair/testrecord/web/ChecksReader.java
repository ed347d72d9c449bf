package plantair.testrecord.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;
import plantair.equipment.CompressorPlate;
import plantair.pumpup.PossibleRange;
import plantair.pumpup.StaticHold;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.testrecord.TestChecks;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/** Reads what was checked around the runs. */
final class ChecksReader {

    private final FieldChecks checks;
    private final Errors errors;

    ChecksReader(FieldChecks checks, Errors errors) {
        this.checks = checks;
        this.errors = errors;
    }

    /** The checks; what cannot be read is rejected beside its field. */
    TestChecks read(ChecksForm form, CompressorPlate plate) {
        Optional<Entered> start = pressure("checks.holdStart", form.getHoldStart());
        Optional<Entered> end = pressure("checks.holdEnd", form.getHoldEnd());
        Optional<Entered> waited = possible(
                "checks.holdWait",
                checks.positive(
                        "checks.holdWait", checks.optional("checks.holdWait", form.getHoldWait(), DurationUnit.class)));
        boolean some = start.isPresent() || end.isPresent() || waited.isPresent();
        if (some && !(start.isPresent() && end.isPresent() && waited.isPresent()) && !errors.hasErrors()) {
            errors.rejectValue("checks.holdStart.number", "test.holdIncomplete");
        }
        return new TestChecks(
                start.orElse(null),
                end.orElse(null),
                waited.orElse(null),
                checks.optionalChoice("checks.holdPlace", form.getHoldPlace(), StaticHold.Place.class)
                        .orElse(null),
                yesOrNo("checks.othersOff", form.getOthersOff()),
                yesOrNo("checks.speedHeld", form.getSpeedHeld()),
                checks.positive(
                                "checks.inputPower",
                                checks.optional("checks.inputPower", form.getInputPower(), PowerUnit.class))
                        .orElse(null),
                fixed("checks.voltage", form.getVoltage(), FixedUnit.VOLT),
                fixed("checks.motorCurrent", form.getMotorCurrent(), FixedUnit.AMPERE),
                percent("checks.powerFactor", form.getPowerFactor()),
                percent("checks.motorEfficiency", form.getMotorEfficiency()),
                plate.motorPower(),
                plate.motorPhases(),
                plate.displacement(),
                plate.control());
    }

    private Optional<Entered> pressure(String path, EnteredField field) {
        Optional<Entered> entered = checks.optional(path, field, PressureUnit.class);
        if (entered.isPresent()
                && !RunReader.isPossible(
                        entered.get(),
                        PossibleRange.GAUGE_PRESSURE,
                        e -> GaugePressure.of(e).pascals())) {
            return reject(path, "range.GAUGE_PRESSURE", entered.get());
        }
        return entered;
    }

    private Optional<Entered> possible(String path, Optional<Entered> entered) {
        if (entered.isPresent()
                && !RunReader.isPossible(
                        entered.get(), PossibleRange.ELAPSED, e -> Elapsed.of(e).seconds())) {
            return reject(path, "range.ELAPSED", entered.get());
        }
        return entered;
    }

    private @Nullable Entered fixed(String path, EnteredField field, FixedUnit unit) {
        return checks.positive(path, checks.optional(path, field, unit)).orElse(null);
    }

    private @Nullable Entered percent(String path, EnteredField field) {
        Optional<Entered> entered = checks.positive(path, checks.optional(path, field, FixedUnit.PERCENT));
        if (entered.isPresent() && entered.get().part() > 1) {
            return reject(path, "test.percent", entered.get()).orElse(null);
        }
        return entered.orElse(null);
    }

    private Optional<Entered> reject(String path, String code, Entered entered) {
        errors.rejectValue(path + ".number", code, new Object[] {entered.toString()}, null);
        return Optional.empty();
    }

    private @Nullable Boolean yesOrNo(String path, String typed) {
        return checks.optionalChoice(path, typed, Answer.class)
                .map(answer -> answer == Answer.YES)
                .orElse(null);
    }

    /** An answer that may be left open. */
    enum Answer {
        /** It was so. */
        YES,
        /** It was not. */
        NO
    }
}
