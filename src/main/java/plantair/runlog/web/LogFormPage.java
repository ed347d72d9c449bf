package plantair.runlog.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.instrument.Instruments;
import plantair.quantity.PressureUnit;
import plantair.runlog.DecimalMark;
import plantair.runlog.LogChoices;
import plantair.runlog.LogGuess;
import plantair.runlog.LogReadings;
import plantair.runlog.LogText;
import plantair.runlog.PressureReference;
import plantair.runlog.RunCurves;
import plantair.runlog.Separator;
import plantair.runlog.TimeFormat;
import plantair.runlog.WaitingLogs.Waiting;
import plantair.testrecord.PumpUpTest;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** What the page of the columns needs beside its form. */
@Component
final class LogFormPage {

    private final Choices choices;
    private final Instruments instruments;
    private final RunCurves curves;

    LogFormPage(Choices choices, Instruments instruments, RunCurves curves) {
        this.curves = curves;
        this.choices = choices;
        this.instruments = instruments;
    }

    /** Puts the choice lists into the model. */
    ModelAndView fill(ModelAndView page, PumpUpTest test, Waiting log, LogForm form) {
        long siteId = test.compressor().site().id();
        boolean anywhere = !form.getAnywhere().isEmpty();
        List<Instrument> offered = instruments.offered(InstrumentKind.GAUGE, siteId, form.getLogger(), anywhere);
        List<Choice> gauges = offered.stream()
                .map(one -> new Choice(String.valueOf(one.id()), one.facts().tag()))
                .toList();
        return page.addObject("testId", test.id())
                .addObject("key", log.id())
                .addObject("tag", test.compressor().tag())
                .addObject("fileName", log.fileName())
                .addObject("runs", curves.runsOf(test.id()))
                .addObject("separators", choices.of("log.separator", Separator.class))
                .addObject("marks", choices.of("log.mark", DecimalMark.class))
                .addObject("formats", choices.of("log.format", TimeFormat.class))
                .addObject("references", choices.of("log.reference", PressureReference.class))
                .addObject("pressures", units())
                .addObject("gauges", gauges)
                .addObject("elsewhere", !anywhere && instruments.existsByFactsInServiceTrueAndFactsKeptAtIdNot(siteId));
    }

    private static List<Choice> units() {
        return Stream.of(PressureUnit.values())
                .map(unit -> new Choice(unit.code(), unit.symbol()))
                .toList();
    }

    LogPreview preview(LogText text, LogChoices chosen, LogReadings readings, UnitSet units) {
        return LogPreview.of(text, chosen.separator(), chosen.skippedLines()).with(readings, QuantityFormat.of(units));
    }

    /** As good as it gets while something is wrong with the choices; what was typed can still be chosen. */
    LogPreview preview(
            LogText text, LogForm form, Optional<LogChoices> chosen, Optional<LogReadings> readings, UnitSet units) {
        if (chosen.isPresent() && readings.isPresent()) {
            return preview(text, chosen.get(), readings.get(), units);
        }
        LogChoices guess = LogGuess.of(text, units.pressure());
        Separator separator = Stream.of(Separator.values())
                .filter(one -> one.name().equals(form.getSeparator()))
                .findFirst()
                .orElse(guess.separator());
        return LogPreview.of(text, separator, guess.skippedLines());
    }
}
