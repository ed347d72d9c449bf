package plantair.testrecord.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.modulith.NamedInterface;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import plantair.equipment.Compressor;
import plantair.equipment.Control;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.StaticHold;
import plantair.pumpup.UnlikelyReading;
import plantair.quantity.FixedUnit;
import plantair.testrecord.FigureText;
import plantair.testrecord.TestDraft;
import plantair.testrecord.UnlikelyReadings;
import plantair.web.Choices;
import plantair.web.QuantityFormat;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;
import plantair.web.Warnings;

/** What the page of a test form needs beside the form: choices, the machine, and what looks unlikely. */
@Component
@NamedInterface("form")
public class TestFormPage {

    private final Choices choices;
    private final VolumeChoices volumes;
    private final InstrumentChoices instruments;
    private final UnlikelyReadings unlikely;

    TestFormPage(Choices choices, VolumeChoices volumes, InstrumentChoices instruments, UnlikelyReadings unlikely) {
        this.choices = choices;
        this.instruments = instruments;
        this.volumes = volumes;
        this.unlikely = unlikely;
    }

    /** Puts the choice lists into the model. */
    public void fill(Model model, Compressor compressor, TestForm form) {
        long siteId = compressor.site().id();
        model.addAttribute("compressorId", compressor.id());
        model.addAttribute("tag", compressor.tag());
        model.addAttribute("siteName", compressor.site().name());
        model.addAttribute("siteId", siteId);
        model.addAttribute("receiverChoices", volumes.receivers(siteId));
        model.addAttribute("pipeChoices", volumes.pipes(siteId));
        model.addAttribute("airChoices", choices.of("air", AirTemperature.class));
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("barometers", UnitChoices.barometer());
        model.addAttribute("temperatures", UnitChoices.temperature());
        model.addAttribute("durations", UnitChoices.duration());
        model.addAttribute("volumes", UnitChoices.volume());
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
        model.addAttribute("rpm", UnitChoices.only(FixedUnit.RPM));
        model.addAttribute("gauges", instruments.of(InstrumentKind.GAUGE, siteId, form));
        model.addAttribute("timers", instruments.of(InstrumentKind.TIMER, siteId, form));
        model.addAttribute("thermometers", instruments.of(InstrumentKind.THERMOMETER, siteId, form));
        model.addAttribute("barometersUsed", instruments.of(InstrumentKind.BAROMETER, siteId, form));
        model.addAttribute("elsewhere", form.getAnywhere().isEmpty() && instruments.hasMore(siteId));
        model.addAttribute("places", choices.of("place", StaticHold.Place.class));
        model.addAttribute("answers", choices.of("answer", ChecksReader.Answer.class));
        model.addAttribute("powers", UnitChoices.power());
        model.addAttribute("volts", UnitChoices.only(FixedUnit.VOLT));
        model.addAttribute("amps", UnitChoices.only(FixedUnit.AMPERE));
        model.addAttribute("variableSpeed", compressor.facts().plate().control() == Control.VARIABLE_SPEED);
        model.addAttribute("mostRuns", TestForm.MOST_RUNS);
    }

    /** The instruments of a kind that a form offers. */
    public List<Instrument> offered(InstrumentKind kind, Compressor compressor, TestForm form) {
        return instruments.offered(kind, compressor.site().id(), form);
    }

    /** What looks unlikely in a draft, beside the fields of its form. */
    public Warnings warnings(TestForm form, TestDraft draft, Optional<Long> superseded, UnitSet units) {
        var warnings = new Warnings();
        List<Integer> rows = filledRows(form);
        for (UnlikelyReading reading : unlikely.in(draft, superseded)) {
            String path = path(reading, rows);
            warnings.add(
                    path,
                    "unlikely." + reading.code().name(),
                    new FigureText(units, QuantityFormat.of(units)).all(reading.figures()));
        }
        LocalDate day = draft.performedAt()
                .atZone(draft.compressor().site().facts().zoneId())
                .toLocalDate();
        volumes.warn(form, day, warnings);
        return warnings;
    }

    /** Blank rows are skipped in a test, so its run n stands in row n of those that are filled. */
    private static List<Integer> filledRows(TestForm form) {
        return IntStream.range(0, form.getRuns().size())
                .filter(row -> row == 0 || !form.getRuns().get(row).isBlank())
                .boxed()
                .toList();
    }

    private static String path(UnlikelyReading reading, List<Integer> rows) {
        String field = switch (reading.reading()) {
            case BAROMETER -> "barometer";
            case INTAKE_TEMPERATURE -> "intakeTemperature";
            case START_PRESSURE -> "startPressure";
            case STOP_PRESSURE -> "stopPressure";
            case ELAPSED -> "elapsed";
            case START_AIR -> "startAir";
            case STOP_AIR -> "stopAir";
            case SETTLED_PRESSURE -> "settledPressure";
            case SETTLED_AIR -> "settledAir";
        };
        return reading.run() == 0 ? field : "runs[" + rows.get(reading.run() - 1) + "]." + field;
    }
}
