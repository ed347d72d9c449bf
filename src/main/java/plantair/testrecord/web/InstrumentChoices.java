package plantair.testrecord.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.instrument.Calibrations;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.instrument.Instruments;
import plantair.testrecord.InstrumentCopy;
import plantair.web.Choice;
import plantair.web.FieldChecks;

/** The instruments in service, as choices of a test form and as copies for a test. */
@Component
class InstrumentChoices {

    private final Instruments instruments;
    private final Calibrations calibrations;

    InstrumentChoices(Instruments instruments, Calibrations calibrations) {
        this.instruments = instruments;
        this.calibrations = calibrations;
    }

    List<Choice> of(InstrumentKind kind) {
        return instruments.findAllByFactsKindAndFactsInServiceTrueOrderByFactsTag(kind).stream()
                .map(instrument -> new Choice(
                        String.valueOf(instrument.id()), instrument.facts().tag()))
                .toList();
    }

    /** Copies of what was chosen, as it stood on the day of the test; what is not in the register is rejected. */
    List<InstrumentCopy> read(TestForm form, LocalDate day, FieldChecks checks, Errors errors) {
        List<InstrumentCopy> copies = new ArrayList<>();
        read("gauge", form.getGauge(), InstrumentKind.GAUGE, day, checks, errors)
                .ifPresent(copies::add);
        read("timer", form.getTimer(), InstrumentKind.TIMER, day, checks, errors)
                .ifPresent(copies::add);
        read("thermometer", form.getThermometer(), InstrumentKind.THERMOMETER, day, checks, errors)
                .ifPresent(copies::add);
        read("barometerUsed", form.getBarometerUsed(), InstrumentKind.BAROMETER, day, checks, errors)
                .ifPresent(copies::add);
        Optional<InstrumentCopy> past =
                copies.stream().filter(InstrumentCopy::isPastItsDate).findFirst();
        if (past.isPresent() && form.getOverrideReason().isBlank()) {
            Object[] which = {past.get().tag(), String.valueOf(past.get().dueOn())};
            errors.rejectValue("overrideReason", "test.pastItsDate", which, null);
        }
        return copies;
    }

    private Optional<InstrumentCopy> read(
            String path, String typed, InstrumentKind kind, LocalDate day, FieldChecks checks, Errors errors) {
        Optional<Long> id = checks.id(path, typed, false);
        Optional<Instrument> found = id.flatMap(instruments::findById)
                .filter(instrument -> instrument.facts().kind() == kind);
        if (id.isPresent() && found.isEmpty()) {
            errors.rejectValue(path, "test.noSuchInstrument");
        }
        return found.map(instrument -> InstrumentCopy.of(
                instrument, calibrations.findLatest(instrument.id(), day).orElse(null), day));
    }
}
