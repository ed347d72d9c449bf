package plantair.demand.web;

import java.util.List;
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
import plantair.demand.LeaksFrom;
import plantair.demand.SupplyChoice;
import plantair.demand.SupplyChoices;
import plantair.demand.SupplyFacts;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.quantity.FixedUnit;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** How a site reckons its supply, seen and changed. */
@Controller
final class ChoiceController {

    private static final String FORM = "demand/choices";

    private final Sites sites;
    private final Compressors compressors;
    private final SupplyChoices supplyChoices;
    private final Register<SupplyFacts, SupplyChoice> register;
    private final Choices choices;

    ChoiceController(
            Sites sites,
            Compressors compressors,
            SupplyChoices supplyChoices,
            Register<SupplyFacts, SupplyChoice> register,
            Choices choices) {
        this.sites = sites;
        this.compressors = compressors;
        this.supplyChoices = supplyChoices;
        this.register = register;
        this.choices = choices;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("sources", choices.of("supply.leaksFrom", LeaksFrom.class));
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("flows", UnitChoices.flow());
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
    }

    @GetMapping("/sites/{id}/supply/choices")
    ModelAndView show(@PathVariable long id, UnitSet units) {
        Site site = find(id);
        SupplyChoice choice = supplyChoices.of(site);
        return page(site, choice, new ModelAndView(FORM, "form", ChoiceForm.from(choice, units)));
    }

    @PostMapping("/sites/{id}/supply/choices")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") ChoiceForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Site site = find(id);
        SupplyChoice choice = supplyChoices.of(site);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<SupplyFacts> facts = new ChoiceReader(sent).read(form, site.name(), machines(id));
        sent.change(register, choice, facts);
        var saved = sent.save("workingPressure", by -> supplyChoices.set(choice, facts.orElseThrow(), by));
        return saved.isPresent()
                ? sent.accepted("/sites/" + id + "/supply", redirect)
                : page(site, choice, sent.refused(FORM));
    }

    private ModelAndView page(Site site, SupplyChoice choice, ModelAndView page) {
        return page.addObject("site", site.name())
                .addObject("siteId", site.id())
                .addObject("own", choice.isSet())
                .addObject(
                        "facts",
                        choice.facts().lines().isEmpty()
                                ? List.of()
                                : choice.facts().lines().lines().toList())
                .addObject(
                        "machines",
                        machines(site.id()).stream()
                                .map(machine -> new Choice(String.valueOf(machine.id()), machine.tag()))
                                .toList());
    }

    private List<Compressor> machines(long siteId) {
        return compressors.findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(siteId).stream()
                .filter(Compressor::isInService)
                .toList();
    }

    private Site find(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }
}
