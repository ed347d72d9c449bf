package plantair.offer.web;

import java.util.List;
import java.util.Objects;
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
import plantair.offer.OfferFacts;
import plantair.offer.Offers;
import plantair.offer.RegisteredOffer;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowBasis;
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

/** Adds offers to a site, shows them and changes what is said of them. */
@Controller
final class OfferController {

    private static final String FORM = "offers/form";

    private final Sites sites;
    private final Offers offers;
    private final Register<OfferFacts, RegisteredOffer> register;
    private final Choices choices;

    OfferController(Sites sites, Offers offers, Register<OfferFacts, RegisteredOffer> register, Choices choices) {
        this.sites = sites;
        this.offers = offers;
        this.register = register;
        this.choices = choices;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("flows", UnitChoices.flow());
        model.addAttribute("bases", choices.of("basis", FlowBasis.class));
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("powers", UnitChoices.power());
        model.addAttribute("barometers", UnitChoices.barometer());
        model.addAttribute("temperatures", UnitChoices.temperature());
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
    }

    @GetMapping("/sites/{id}/offers/new")
    ModelAndView blank(@PathVariable long id, UnitSet units) {
        return page(site(id), null, new ModelAndView(FORM, "form", OfferForm.blank(units)));
    }

    @PostMapping("/sites/{id}/offers")
    ModelAndView add(
            @PathVariable long id,
            @ModelAttribute("form") OfferForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Site site = site(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<OfferFacts> facts = form.read(sent);
        checkLabel(sent, facts, id, 0);
        var saved = sent.save(
                "label", by -> register.add(new RegisteredOffer(site, facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent()
                ? sent.accepted("/sites/" + id + "/offers", redirect)
                : page(site, null, sent.refused(FORM));
    }

    @GetMapping("/offers/{id}")
    ModelAndView show(@PathVariable long id, UnitSet units) {
        RegisteredOffer offer = offer(id);
        return page(offer.site(), offer, new ModelAndView("offers/show", "offer", OfferView.of(offer, units)));
    }

    @GetMapping("/offers/{id}/edit")
    ModelAndView edit(@PathVariable long id) {
        RegisteredOffer offer = offer(id);
        return page(offer.site(), offer, new ModelAndView(FORM, "form", OfferForm.from(offer)));
    }

    @PostMapping("/offers/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") OfferForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        RegisteredOffer offer = offer(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<OfferFacts> facts = form.read(sent);
        checkLabel(sent, facts, offer.site().id(), id);
        sent.change(register, offer, facts);
        var saved = sent.save(
                "label", by -> register.revise(id, offer.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent()
                ? sent.accepted("/offers/" + id, redirect)
                : page(offer.site(), offer, sent.refused(FORM));
    }

    private Site site(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }

    private RegisteredOffer offer(long id) {
        return offers.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("offer " + id));
    }

    /** A price is typed in the currency of the site. */
    private static ModelAndView page(Site site, @Nullable RegisteredOffer offer, ModelAndView page) {
        String currency = Objects.requireNonNullElse(site.facts().currency(), FixedUnit.MONEY.symbol());
        return page.addObject("siteId", site.id())
                .addObject("siteName", site.name())
                .addObject("money", List.of(new Choice(FixedUnit.MONEY.code(), currency)))
                .addObject("changed", offer == null ? null : offer.facts().label())
                .addObject("target", offer == null ? "/sites/" + site.id() + "/offers" : "/offers/" + offer.id());
    }

    private void checkLabel(Submission sent, Optional<OfferFacts> facts, long siteId, long id) {
        if (facts.isPresent()
                && offers.existsBySiteIdAndFactsLabelIgnoreCaseAndIdNot(
                        siteId, facts.get().label(), id)) {
            sent.reject("label", "register.taken");
        }
    }
}
