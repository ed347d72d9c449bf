package plantair.vessel.web;

import java.time.Clock;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Receivers;
import plantair.register.Submission;
import plantair.vessel.FindingDraft;
import plantair.vessel.FindingKind;
import plantair.vessel.RecordVessel;
import plantair.vessel.VesselFinding;
import plantair.vessel.VesselFindings;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** Takes down damage that somebody saw, and who says that it is mended. */
@Controller
final class FindingController {

    private static final String FORM = "vessel/finding";
    private static final String CLEAR = "vessel/clear";

    private final Receivers receivers;
    private final VesselFindings findings;
    private final RecordVessel record;
    private final Choices choices;
    private final Clock clock;

    FindingController(Receivers receivers, VesselFindings findings, RecordVessel record, Choices choices, Clock clock) {
        this.receivers = receivers;
        this.findings = findings;
        this.record = record;
        this.choices = choices;
        this.clock = clock;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("kinds", choices.of("finding.kind", FindingKind.class));
    }

    @GetMapping("/receivers/{id}/findings/new")
    ModelAndView blank(@PathVariable long id) {
        return new ModelAndView(FORM, "form", FindingForm.blank()).addObject("vessel", vessel(id));
    }

    @PostMapping("/receivers/{id}/findings")
    ModelAndView add(
            @PathVariable long id,
            @ModelAttribute("form") FindingForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Vessel vessel = vessel(id);
        var sent = new Submission(form.getEdit(), "", errors, person);
        Optional<FindingDraft> draft = form.read(sent, vessel);
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), null, by.by()));
        return saved.isPresent()
                ? sent.accepted(vessel.page(), redirect)
                : sent.refused(FORM).addObject("vessel", vessel);
    }

    @GetMapping("/findings/{id}/clear")
    ModelAndView ask(@PathVariable long id) {
        VesselFinding finding = find(id);
        Vessel vessel = vessel(finding.receiverId());
        return findings.findByClearsId(id).isPresent()
                ? new ModelAndView("redirect:" + vessel.page())
                : page(vessel, finding, new ModelAndView(CLEAR, "form", FindingForm.blank()));
    }

    @PostMapping("/findings/{id}/clear")
    ModelAndView clear(
            @PathVariable long id,
            @ModelAttribute("form") FindingForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        VesselFinding finding = find(id);
        Vessel vessel = vessel(finding.receiverId());
        var sent = new Submission(form.getEdit(), "", errors, person);
        Optional<FindingDraft> draft = form.readCleared(sent, vessel, finding);
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), finding, by.by()));
        return saved.isPresent() ? sent.accepted(vessel.page(), redirect) : page(vessel, finding, sent.refused(CLEAR));
    }

    private VesselFinding find(long id) {
        return findings.findById(id)
                .filter(finding -> finding.clearsId() == null)
                .orElseThrow(() -> new NoSuchRecord("finding " + id));
    }

    private Vessel vessel(long id) {
        return receivers
                .findWithSiteById(id)
                .map(receiver -> Vessel.of(receiver, clock))
                .orElseThrow(() -> new NoSuchRecord("receiver " + id));
    }

    private static ModelAndView page(Vessel vessel, VesselFinding finding, ModelAndView page) {
        return page.addObject("vessel", vessel)
                .addObject("seen", finding.kind().name())
                .addObject("seenOn", finding.foundOn())
                .addObject("seenNote", finding.note())
                .addObject("findingId", finding.id());
    }
}
