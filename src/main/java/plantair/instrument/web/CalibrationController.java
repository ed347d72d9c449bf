package plantair.instrument.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.instrument.Calibration;
import plantair.instrument.CalibrationDraft;
import plantair.instrument.Calibrations;
import plantair.instrument.Instrument;
import plantair.instrument.Instruments;
import plantair.instrument.RecordCalibration;
import plantair.quantity.Unit;
import plantair.register.Submission;
import plantair.web.Choices;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** Records calibrations, and corrections of them. */
@Controller
final class CalibrationController {

    private static final String FORM = "instruments/calibration";

    private final Instruments instruments;
    private final Calibrations calibrations;
    private final RecordCalibration record;
    private final CalibrationWords words;
    private final Choices choices;

    CalibrationController(
            Instruments instruments,
            Calibrations calibrations,
            RecordCalibration record,
            CalibrationWords words,
            Choices choices) {
        this.instruments = instruments;
        this.calibrations = calibrations;
        this.record = record;
        this.words = words;
        this.choices = choices;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("inOrder", choices.of("calibration.leftInOrder", CalibrationReader.InOrder.class));
    }

    @GetMapping("/instruments/{id}/calibrations/new")
    ModelAndView blank(@PathVariable long id, UnitSet units) {
        Instrument instrument = find(id);
        var form = CalibrationForm.blank(unit(instrument, units));
        return page(instrument, null, new ModelAndView(FORM, "form", form));
    }

    @GetMapping("/instruments/{id}/calibrations/{old}/supersede")
    ModelAndView correct(@PathVariable long id, @PathVariable long old, UnitSet units) {
        Instrument instrument = find(id);
        Calibration calibration = find(instrument, old);
        if (calibrations.findBySupersedesId(old).isPresent()) {
            return new ModelAndView("redirect:/instruments/" + id);
        }
        var form = CalibrationForm.from(calibration, unit(instrument, units));
        return page(instrument, old, new ModelAndView(FORM, "form", form));
    }

    /** The button for one more point: the form as typed, unchecked, with a row more. */
    @PostMapping(
            path = {"/instruments/{id}/calibrations", "/instruments/{id}/calibrations/{old}/supersede"},
            params = "more")
    ModelAndView more(
            @PathVariable long id,
            @PathVariable(required = false) @Nullable Long old,
            @ModelAttribute("form") CalibrationForm form,
            UnitSet units) {
        Instrument instrument = find(id);
        form.addPoint(unit(instrument, units));
        return page(instrument, old, new ModelAndView(FORM));
    }

    @PostMapping(path = {"/instruments/{id}/calibrations", "/instruments/{id}/calibrations/{old}/supersede"})
    ModelAndView save(
            @PathVariable long id,
            @PathVariable(required = false) @Nullable Long old,
            @ModelAttribute("form") CalibrationForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Instrument instrument = find(id);
        var superseded = Optional.ofNullable(old).map(known -> find(instrument, known));
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<CalibrationDraft> draft = new CalibrationReader(sent, instrument).read(form, words.latestToday());
        if (superseded.isPresent() && form.getEdit().getReason().isBlank()) {
            sent.reject("edit.reason", "text.missing");
        }
        var saved = sent.save(
                "certificateNumber",
                by -> superseded.isPresent()
                        ? record.supersede(superseded.get(), draft.orElseThrow(), by.reason(), by.by())
                        : record.record(draft.orElseThrow(), by.by()));
        if (saved.isEmpty()) {
            return page(instrument, old, sent.refused(FORM));
        }
        var page = sent.accepted("/instruments/" + id, redirect);
        if (saved.get().foundErrors()) {
            Flash.say(redirect, "calibration.saved.errors");
        }
        return page;
    }

    private Instrument find(long id) {
        return instruments.findById(id).orElseThrow(() -> new NoSuchRecord("instrument " + id));
    }

    private Calibration find(Instrument instrument, long id) {
        return calibrations
                .findById(id)
                .filter(found -> found.instrument().id() == instrument.id())
                .orElseThrow(() -> new NoSuchRecord("calibration " + id));
    }

    private static Unit unit(Instrument instrument, UnitSet units) {
        return KindUnits.proposed(instrument.facts().kind(), units);
    }

    private static ModelAndView page(Instrument instrument, @Nullable Long old, ModelAndView page) {
        var facts = instrument.facts();
        String address = "/instruments/" + instrument.id() + "/calibrations";
        return page.addObject("named", new InstrumentView.Named(instrument.id(), facts.tag()))
                .addObject("target", old == null ? address : address + "/" + old + "/supersede")
                .addObject("isCorrection", old != null)
                .addObject("kindUnits", KindUnits.choices(facts.kind()));
    }
}
