package plantair.instrument.web;

import java.util.Optional;
import java.util.stream.Stream;
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
import plantair.instrument.AccuracyGrade;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentFacts;
import plantair.instrument.InstrumentKind;
import plantair.instrument.Instruments;
import plantair.quantity.FixedUnit;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Adds instruments and changes what is said of them. What an instrument measures never changes. */
@Controller
final class InstrumentFormController {

    private static final String FORM = "instruments/form";

    private final Instruments instruments;
    private final Register<InstrumentFacts, Instrument> register;
    private final Sites sites;
    private final Choices choices;

    InstrumentFormController(
            Instruments instruments, Register<InstrumentFacts, Instrument> register, Sites sites, Choices choices) {
        this.instruments = instruments;
        this.register = register;
        this.sites = sites;
        this.choices = choices;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute(
                "sites",
                sites.findAllByOrderByFactsName().stream()
                        .map(site -> new Choice(String.valueOf(site.id()), site.name()))
                        .toList());
        model.addAttribute("kinds", choices.of("instrument.kind", InstrumentKind.class));
        model.addAttribute("grades", choices.of("grade", AccuracyGrade.class));
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
    }

    @GetMapping("/instruments/new")
    ModelAndView blank(@RequestParam(defaultValue = "GAUGE") String kind, UnitSet units) {
        InstrumentKind known = kind(kind);
        return page(known, new ModelAndView(FORM, "form", InstrumentForm.blank(known, units)));
    }

    @PostMapping("/instruments")
    ModelAndView add(
            @ModelAttribute("form") InstrumentForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        InstrumentKind kind = kind(form.getKind());
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<InstrumentFacts> facts = new InstrumentReader(sent, kind, sites).read(form);
        checkTag(sent, facts, 0);
        var saved = sent.save("tag", by -> register.add(new Instrument(facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent()
                ? sent.accepted("/instruments/" + saved.get().id(), redirect)
                : page(kind, sent.refused(FORM));
    }

    @GetMapping("/instruments/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        Instrument instrument = find(id);
        return page(instrument, new ModelAndView(FORM, "form", InstrumentForm.from(instrument, units)));
    }

    @PostMapping("/instruments/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") InstrumentForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Instrument instrument = find(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<InstrumentFacts> facts =
                new InstrumentReader(sent, instrument.facts().kind(), sites).read(form);
        checkTag(sent, facts, id);
        sent.change(register, instrument, facts);
        var saved = sent.save(
                "tag", by -> register.revise(id, instrument.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted("/instruments/" + id, redirect) : page(instrument, sent.refused(FORM));
    }

    private Instrument find(long id) {
        return instruments.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("instrument " + id));
    }

    private static InstrumentKind kind(String name) {
        return Stream.of(InstrumentKind.values())
                .filter(kind -> kind.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NoSuchRecord("kind of instrument"));
    }

    private static ModelAndView page(Instrument instrument, ModelAndView page) {
        var facts = instrument.facts();
        return page(facts.kind(), page).addObject("changed", new InstrumentView.Named(instrument.id(), facts.tag()));
    }

    private static ModelAndView page(InstrumentKind kind, ModelAndView page) {
        return page.addObject("kind", kind.name())
                .addObject("hasSpan", KindUnits.hasSpan(kind))
                .addObject("kindUnits", KindUnits.choices(kind));
    }

    private void checkTag(Submission sent, Optional<InstrumentFacts> facts, long id) {
        if (facts.isPresent()
                && instruments.existsByFactsTagIgnoreCaseAndIdNot(facts.get().tag(), id)) {
            sent.reject("tag", "register.taken");
        }
    }
}
