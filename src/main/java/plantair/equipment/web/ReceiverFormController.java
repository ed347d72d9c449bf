package plantair.equipment.web;

import java.time.LocalDate;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Receiver;
import plantair.equipment.ReceiverFacts;
import plantair.equipment.Receivers;
import plantair.equipment.VolumeKnownBy;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Adds receivers and changes what is said of them. */
@Controller
final class ReceiverFormController {

    private static final String FORM = "receivers/form";

    private final Receivers receivers;
    private final Register<ReceiverFacts, Receiver> register;
    private final SiteList sites;
    private final HazardWords hazards;
    private final Choices choices;

    ReceiverFormController(
            Receivers receivers,
            Register<ReceiverFacts, Receiver> register,
            SiteList sites,
            HazardWords hazards,
            Choices choices) {
        this.receivers = receivers;
        this.register = register;
        this.sites = sites;
        this.hazards = hazards;
        this.choices = choices;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("sites", sites.choices());
        model.addAttribute("knownBy", choices.of("knownBy", VolumeKnownBy.class));
        model.addAttribute("volumes", UnitChoices.volume());
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("thicknesses", UnitChoices.bore());
        model.addAttribute("required", choices.of("receiver.certificateRequired", ReceiverForm.Required.class));
    }

    @GetMapping("/receivers/new")
    ModelAndView blank(@RequestParam(defaultValue = "") String site, UnitSet units) {
        return new ModelAndView(FORM, "form", ReceiverForm.blank(site, units));
    }

    @PostMapping("/receivers")
    ModelAndView add(
            @ModelAttribute("form") ReceiverForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<Site> site = sites.read(sent, form.getSite());
        Optional<ReceiverFacts> facts = form.read(sent, site.map(hazards::today).orElse(LocalDate.MIN));
        site.ifPresent(chosen -> checkTag(sent, facts, chosen.id(), 0));
        var saved = sent.save(
                "tag", by -> register.add(new Receiver(site.orElseThrow(), facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted("/receivers/" + saved.get().id(), redirect) : sent.refused(FORM);
    }

    @GetMapping("/receivers/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        Receiver receiver = find(id);
        return page(receiver, new ModelAndView(FORM, "form", ReceiverForm.from(receiver, units)));
    }

    @PostMapping("/receivers/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") ReceiverForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Receiver receiver = find(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<ReceiverFacts> facts = form.read(sent, hazards.today(receiver.site()));
        checkTag(sent, facts, receiver.site().id(), id);
        sent.change(register, receiver, facts);
        var saved = sent.save(
                "tag", by -> register.revise(id, receiver.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted("/receivers/" + id, redirect) : page(receiver, sent.refused(FORM));
    }

    private Receiver find(long id) {
        return receivers.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("receiver " + id));
    }

    private static ModelAndView page(Receiver receiver, ModelAndView page) {
        String tag = receiver.facts().tag();
        return page.addObject("changed", Subject.of(receiver.id(), tag, receiver.site()));
    }

    private void checkTag(Submission sent, Optional<ReceiverFacts> facts, long site, long id) {
        if (facts.isPresent()
                && receivers.existsBySiteIdAndFactsTagIgnoreCaseAndIdNot(
                        site, facts.get().tag(), id)) {
            sent.reject("tag", "register.taken");
        }
    }
}
