package plantair.equipment.web;

import java.util.List;
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
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFacts;
import plantair.equipment.CompressorKind;
import plantair.equipment.Compressors;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowBasis;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Adds compressors and changes what is said of them. */
@Controller
final class CompressorFormController {

    private static final String FORM = "compressors/form";

    private final Compressors compressors;
    private final Register<CompressorFacts, Compressor> register;
    private final SiteList sites;
    private final Choices choices;

    CompressorFormController(
            Compressors compressors, Register<CompressorFacts, Compressor> register, SiteList sites, Choices choices) {
        this.compressors = compressors;
        this.register = register;
        this.sites = sites;
        this.choices = choices;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("sites", sites.choices());
        model.addAttribute("kinds", choices.of("kind", CompressorKind.class));
        model.addAttribute("drives", choices.of("drive", Drive.class));
        model.addAttribute("controls", choices.of("control", Control.class));
        model.addAttribute("bases", choices.of("basis", FlowBasis.class));
        model.addAttribute("phases", List.of(new Choice("1", "1"), new Choice("3", "3")));
        model.addAttribute("powers", UnitChoices.power());
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("flows", UnitChoices.flow());
        model.addAttribute("volt", UnitChoices.only(FixedUnit.VOLT));
        model.addAttribute("ampere", UnitChoices.only(FixedUnit.AMPERE));
        model.addAttribute("hertz", UnitChoices.only(FixedUnit.HERTZ));
        model.addAttribute("rpm", UnitChoices.only(FixedUnit.RPM));
        model.addAttribute("hours", UnitChoices.only(FixedUnit.HOUR));
    }

    @GetMapping("/compressors/new")
    ModelAndView blank(@RequestParam(defaultValue = "") String site, UnitSet units) {
        return new ModelAndView(FORM, "form", CompressorForm.blank(site, units));
    }

    @PostMapping("/compressors")
    ModelAndView add(
            @ModelAttribute("form") CompressorForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<Site> site = sites.read(sent, form.getSite());
        Optional<CompressorFacts> facts = form.read(sent);
        site.ifPresent(chosen -> checkTag(sent, facts, chosen.id(), 0));
        var saved = sent.save(
                "tag",
                by -> register.add(new Compressor(site.orElseThrow(), facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted("/compressors/" + saved.get().id(), redirect) : sent.refused(FORM);
    }

    /** The button for one more rating point: the form as typed, unchecked, with a row more. */
    @PostMapping(
            path = {"/compressors", "/compressors/{id}"},
            params = "more")
    ModelAndView more(@PathVariable Optional<Long> id, @ModelAttribute("form") CompressorForm form, UnitSet units) {
        form.addRating(units);
        var page = new ModelAndView(FORM);
        return id.isPresent() ? page(find(id.get()), page) : page;
    }

    @GetMapping("/compressors/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        Compressor compressor = find(id);
        return page(compressor, new ModelAndView(FORM, "form", CompressorForm.from(compressor, units)));
    }

    @PostMapping("/compressors/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") CompressorForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Compressor compressor = find(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<CompressorFacts> facts = form.read(sent);
        checkTag(sent, facts, compressor.site().id(), id);
        sent.change(register, compressor, facts);
        var saved = sent.save(
                "tag", by -> register.revise(id, compressor.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted("/compressors/" + id, redirect) : page(compressor, sent.refused(FORM));
    }

    private Compressor find(long id) {
        return compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
    }

    private static ModelAndView page(Compressor compressor, ModelAndView page) {
        String tag = compressor.tag();
        return page.addObject("changed", Subject.of(compressor.id(), tag, compressor.site()));
    }

    private void checkTag(Submission sent, Optional<CompressorFacts> facts, long site, long id) {
        if (facts.isPresent()
                && compressors.existsBySiteIdAndPlateTagIgnoreCaseAndIdNot(
                        site, facts.get().name(), id)) {
            sent.reject("tag", "register.taken");
        }
    }
}
