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

    /** Those of a kind that a form offers. */
    List<Instrument> offered(InstrumentKind kind, long siteId, TestForm form) {
        return instruments.offered(
                kind, siteId, form.instrument(kind), !form.getAnywhere().isEmpty());
    }

    /** {@link #offered} as a choice list. */
    List<Choice> of(InstrumentKind kind, long siteId, TestForm form) {
        return offered(kind, siteId, form).stream()
                .map(instrument -> new Choice(
                        String.valueOf(instrument.id()), instrument.facts().tag()))
                .toList();
    }

    /** Whether there are more than a form of this site offers at first. */
    boolean hasMore(long siteId) {
        return instruments.existsByFactsInServiceTrueAndFactsKeptAtIdNot(siteId);
    }

    /** Copies of what was chosen, as it stood on the day of the test; what is not in the register is rejected. */
    List<InstrumentCopy> read(TestForm form, LocalDate day, FieldChecks checks, Errors errors) {
        List<InstrumentCopy> copies = new ArrayList<>();
        read("gauge", InstrumentKind.GAUGE, form, day, checks, errors).ifPresent(copies::add);
        read("timer", InstrumentKind.TIMER, form, day, checks, errors).ifPresent(copies::add);
        read("thermometer", InstrumentKind.THERMOMETER, form, day, checks, errors)
                .ifPresent(copies::add);
        read("barometerUsed", InstrumentKind.BAROMETER, form, day, checks, errors)
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
            String path, InstrumentKind kind, TestForm form, LocalDate day, FieldChecks checks, Errors errors) {
        Optional<Long> id = checks.id(path, form.instrument(kind), false);
        Optional<Instrument> found = id.flatMap(instruments::findById)
                .filter(instrument -> instrument.facts().kind() == kind);
        if (id.isPresent() && found.isEmpty()) {
            errors.rejectValue(path, "test.noSuchInstrument");
        }
        return found.map(instrument -> InstrumentCopy.of(
                instrument, calibrations.findLatest(instrument.id(), day).orElse(null), day));
    }
}
