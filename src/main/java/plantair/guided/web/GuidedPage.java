package plantair.guided.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorKind;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.equipment.VesselStop;
import plantair.equipment.VesselStops;
import plantair.guided.MachineFigures;
import plantair.instrument.Calibration;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.Calibrations;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.quantity.FixedUnit;
import plantair.testrecord.GuideLog;
import plantair.testrecord.web.TestFormPage;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.Person;
import plantair.web.UnitChoices;

/** What the page of a guided test needs beside its form. */
@Component
class GuidedPage {

    private final TestFormPage page;
    private final Receivers receivers;
    private final VesselStops vesselStops;
    private final Calibrations calibrations;
    private final Choices choices;
    private final MessageSource messages;
    private final Clock clock;

    GuidedPage(
            TestFormPage page,
            Receivers receivers,
            VesselStops vesselStops,
            Calibrations calibrations,
            Choices choices,
            MessageSource messages,
            Clock clock) {
        this.page = page;
        this.receivers = receivers;
        this.vesselStops = vesselStops;
        this.calibrations = calibrations;
        this.choices = choices;
        this.messages = messages;
        this.clock = clock;
    }

    /** Something about a receiver or an instrument that is to be seen before it is used. */
    record Note(long id, String text) {}

    /**
     * What kind of machine it is, for what is asked of it.
     *
     * @param twoStage whether there is a pressure between stages
     * @param oilSeparator whether it has a separator
     * @param belt whether it has a belt
     * @param automatic whether its speed follows the pressure
     * @param throttles whether its inlet throttles
     */
    record Machine(boolean twoStage, boolean oilSeparator, boolean belt, boolean automatic, boolean throttles) {

        static Machine of(CompressorPlate plate) {
            return new Machine(
                    plate.stages() > 1 && plate.kind() == CompressorKind.PISTON,
                    plate.kind() == CompressorKind.SCREW || plate.kind() == CompressorKind.VANE,
                    plate.drive() == Drive.BELT,
                    plate.control() == Control.VARIABLE_SPEED,
                    plate.control() == Control.MODULATING);
        }
    }

    void fill(Model model, Compressor compressor, GuidedForm form, Person person) {
        page.fill(model, compressor, form);
        LocalDate today = LocalDate.now(clock.withZone(compressor.site().facts().zoneId()));
        model.addAttribute("machine", Machine.of(compressor.facts().plate()));
        model.addAttribute("zone", compressor.site().facts().zone());
        model.addAttribute("username", person.username());
        model.addAttribute("stops", stops(compressor.site().id(), today));
        model.addAttribute("pastDate", pastDate(compressor, form, today));
        model.addAttribute("prepareTicks", ticks(Tick.PREPARED));
        model.addAttribute("isolateTicks", ticks(Tick.ISOLATED));
        model.addAttribute("backTicks", ticks(Tick.PUT_BACK));
        model.addAttribute("afterStops", choices.of("guided.afterStop", GuideLog.AfterStop.class));
        fillFigures(model);
    }

    /** Choices of the quarterly readings. */
    void fillFigures(Model model) {
        model.addAttribute("oilLevels", choices.of("guided.oil", MachineFigures.OilLevel.class));
        model.addAttribute("belts", choices.of("guided.belt", MachineFigures.Belt.class));
        model.addAttribute("hours", UnitChoices.only(FixedUnit.HOUR));
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("temperatures", UnitChoices.temperature());
        model.addAttribute("amps", UnitChoices.only(FixedUnit.AMPERE));
        model.addAttribute("rpm", UnitChoices.only(FixedUnit.RPM));
    }

    private List<Choice> ticks(List<Tick> some) {
        return some.stream()
                .map(tick -> new Choice(tick.name(), choices.label("guided.tick", tick)))
                .toList();
    }

    private List<Note> stops(long siteId, LocalDate today) {
        List<Receiver> all = receivers.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(siteId);
        Map<Long, List<VesselStop>> stops = vesselStops.of(all, receiver -> today);
        return all.stream()
                .flatMap(receiver -> stops.get(receiver.id()).stream()
                        .map(stop -> new Note(
                                receiver.id(), receiver.facts().tag() + ": " + stop.reason() + " " + stop.act())))
                .toList();
    }

    private List<Note> pastDate(Compressor compressor, GuidedForm form, LocalDate today) {
        List<Instrument> all = Stream.of(
                        InstrumentKind.GAUGE,
                        InstrumentKind.TIMER,
                        InstrumentKind.THERMOMETER,
                        InstrumentKind.BAROMETER)
                .flatMap(kind -> page.offered(kind, compressor, form).stream())
                .toList();
        Map<Long, Calibration> latest = new HashMap<>();
        calibrations.findCurrent(all.stream().map(Instrument::id).toList()).stream()
                .filter(one -> !one.doneOn().isAfter(today))
                .forEach(one -> latest.put(one.instrument().id(), one));
        return all.stream()
                .filter(instrument -> isPastDate(latest.get(instrument.id()), today))
                .map(instrument -> new Note(
                        instrument.id(),
                        say("guided.pastDate", instrument.facts().tag())))
                .toList();
    }

    private static boolean isPastDate(@Nullable Calibration latest, LocalDate today) {
        CalibrationStatus status = CalibrationStatus.of(latest, today);
        return status == CalibrationStatus.OVERDUE || status == CalibrationStatus.OUT_OF_ORDER;
    }

    private String say(String key, Object... args) {
        Locale locale = LocaleContextHolder.getLocale();
        return messages.getMessage(key, args, locale);
    }
}
