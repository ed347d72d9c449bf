package plantair.maintenance.web;

import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Compressors;
import plantair.maintenance.MaintenanceEvent;
import plantair.maintenance.MaintenanceEvents;
import plantair.maintenance.RecordEvent;
import plantair.register.Submission;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** Withdraws an event that did not happen; the old one stays readable. */
@Controller
final class WithdrawController {

    private static final String FORM = "maintenance/withdraw";

    private final Compressors compressors;
    private final MaintenanceEvents events;
    private final RecordEvent record;

    WithdrawController(Compressors compressors, MaintenanceEvents events, RecordEvent record) {
        this.compressors = compressors;
        this.events = events;
        this.record = record;
    }

    @GetMapping("/events/{id}/withdraw")
    ModelAndView ask(@PathVariable long id) {
        MaintenanceEvent event = find(id);
        Machine machine = machine(event);
        return event.isWithdrawn() || events.findBySupersedesId(id).isPresent()
                ? new ModelAndView("redirect:" + machine.events())
                : page(machine, event, new ModelAndView(FORM, "form", WithdrawForm.blank()));
    }

    @PostMapping("/events/{id}/withdraw")
    ModelAndView save(
            @PathVariable long id,
            @ModelAttribute("form") WithdrawForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        MaintenanceEvent event = find(id);
        Machine machine = machine(event);
        var sent = new Submission(form.getEdit(), "", errors, person);
        Optional<UUID> submission = new EventReader(sent).submission(form.getSubmission());
        if (form.getEdit().getReason().isBlank()) {
            sent.reject("edit.reason", "text.missing");
        }
        var saved =
                sent.save("submission", by -> record.withdraw(event, submission.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted(machine.events(), redirect) : page(machine, event, sent.refused(FORM));
    }

    private MaintenanceEvent find(long id) {
        return events.findById(id).orElseThrow(() -> new NoSuchRecord("maintenance event " + id));
    }

    private Machine machine(MaintenanceEvent event) {
        return compressors
                .findWithSiteById(event.compressorId())
                .map(Machine::of)
                .orElseThrow(() -> new NoSuchRecord("compressor " + event.compressorId()));
    }

    private static ModelAndView page(Machine machine, MaintenanceEvent event, ModelAndView page) {
        return page.addObject("machine", machine).addObject("event", EventView.of(event, null, machine.zone()));
    }
}
