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
    TestChecks read(TestForm form, CompressorPlate plate) {
        Optional<Entered> start = pressure("holdStart", form.getHoldStart());
        Optional<Entered> end = pressure("holdEnd", form.getHoldEnd());
        Optional<Entered> waited = possible(
                "holdWait",
                checks.positive("holdWait", checks.optional("holdWait", form.getHoldWait(), DurationUnit.class)));
        boolean some = start.isPresent() || end.isPresent() || waited.isPresent();
        if (some && !(start.isPresent() && end.isPresent() && waited.isPresent()) && !errors.hasErrors()) {
            errors.rejectValue("holdStart.number", "test.holdIncomplete");
        }
        return new TestChecks(
                start.orElse(null),
                end.orElse(null),
                waited.orElse(null),
                checks.optionalChoice("holdPlace", form.getHoldPlace(), StaticHold.Place.class)
                        .orElse(null),
                yesOrNo("othersOff", form.getOthersOff()),
                yesOrNo("speedHeld", form.getSpeedHeld()),
                checks.positive("inputPower", checks.optional("inputPower", form.getInputPower(), PowerUnit.class))
                        .orElse(null),
                fixed("voltage", form.getVoltage(), FixedUnit.VOLT),
                fixed("motorCurrent", form.getMotorCurrent(), FixedUnit.AMPERE),
                percent("powerFactor", form.getPowerFactor()),
                percent("motorEfficiency", form.getMotorEfficiency()),
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
