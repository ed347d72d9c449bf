package plantair.maintenance.web;

import java.time.Clock;
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
import plantair.equipment.Compressors;
import plantair.maintenance.EventDraft;
import plantair.maintenance.EventKind;
import plantair.maintenance.MaintenanceEvent;
import plantair.maintenance.MaintenanceEvents;
import plantair.maintenance.RecordEvent;
import plantair.register.Submission;
import plantair.web.Choices;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** Records an event, and corrections of it. */
@Controller
final class EventFormController {

    private static final String FORM = "maintenance/form";

    private final Compressors compressors;
    private final MaintenanceEvents events;
    private final RecordEvent record;
    private final Choices choices;
    private final Clock clock;

    EventFormController(
            Compressors compressors, MaintenanceEvents events, RecordEvent record, Choices choices, Clock clock) {
        this.compressors = compressors;
        this.events = events;
        this.record = record;
        this.choices = choices;
        this.clock = clock;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("kinds", choices.of("event.kind", EventKind.class));
        model.addAttribute("steps", choices.of("event.mayStep", EventReader.Step.class));
    }

    @GetMapping("/compressors/{id}/events/new")
    ModelAndView blank(@PathVariable long id) {
        return page(machine(id), null, new ModelAndView(FORM, "form", EventForm.blank()));
    }

    @PostMapping("/compressors/{id}/events/new")
    ModelAndView save(
            @PathVariable long id,
            @ModelAttribute("form") EventForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Machine machine = machine(id);
        var sent = new Submission(form.getEdit(), "", errors, person);
        Optional<EventDraft> draft = new EventReader(sent).read(form, id, machine.today(clock));
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), by.by()));
        return saved.isPresent()
                ? saved(saved.get(), machine, sent.accepted(machine.events(), redirect), redirect)
                : page(machine, null, sent.refused(FORM));
    }

    @GetMapping("/events/{id}/correct")
    ModelAndView correct(@PathVariable long id) {
        MaintenanceEvent old = find(id);
        Machine machine = machine(old.compressorId());
        return events.findBySupersedesId(id).isPresent()
                ? new ModelAndView("redirect:" + machine.events())
                : page(machine, old, new ModelAndView(FORM, "form", EventForm.from(old)));
    }

    @PostMapping("/events/{id}/correct")
    ModelAndView saveCorrection(
            @PathVariable long id,
            @ModelAttribute("form") EventForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        MaintenanceEvent old = find(id);
        Machine machine = machine(old.compressorId());
        var sent = new Submission(form.getEdit(), "", errors, person);
        Optional<EventDraft> draft = new EventReader(sent).read(form, machine.id(), machine.today(clock));
        if (form.getEdit().getReason().isBlank()) {
            sent.reject("edit.reason", "text.missing");
        }
        if (draft.isPresent() && changesNothing(old, draft.get())) {
            errors.reject("register.unchanged");
        }
        var saved = sent.save("submission", by -> record.supersede(old, draft.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent()
                ? saved(saved.get(), machine, sent.accepted(machine.events(), redirect), redirect)
                : page(machine, old, sent.refused(FORM));
    }

    private static boolean changesNothing(MaintenanceEvent old, EventDraft draft) {
        return !old.isWithdrawn() && old.draft(draft.submission()).equals(draft);
    }

    private static ModelAndView saved(
            MaintenanceEvent event, Machine machine, ModelAndView page, RedirectAttributes redirect) {
        if (event.mayStep() && machine.isInService()) {
            var next = new Flash.Link("/compressors/" + machine.id() + "/tests/new", "event.testAgain");
            Flash.lead(redirect, "event.saved.testAgain", next);
        }
        return page;
    }

    private Machine machine(long id) {
        return compressors
                .findWithSiteById(id)
                .map(Machine::of)
                .orElseThrow(() -> new NoSuchRecord("compressor " + id));
    }

    private MaintenanceEvent find(long id) {
        return events.findById(id).orElseThrow(() -> new NoSuchRecord("maintenance event " + id));
    }

    private static ModelAndView page(Machine machine, @Nullable MaintenanceEvent old, ModelAndView page) {
        return page.addObject("machine", machine)
                .addObject("isCorrection", old != null)
                .addObject("entry", old == null ? null : old.id())
                .addObject("isWithdrawn", old != null && old.isWithdrawn())
                .addObject("target", old == null ? machine.events() + "/new" : "/events/" + old.id() + "/correct");
    }
}
