package plantair.demand.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.PageRequest;
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
import plantair.demand.DemandFacts;
import plantair.demand.DemandItems;
import plantair.demand.SiteBalances;
import plantair.demand.SiteDemand;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Person;
import plantair.web.UnitSet;

/** Lists what takes air at a site, adds to it and changes what is said of it. */
@Controller
final class DemandController {

    private static final String FORM = "demand/form";
    private static final int ROWS = 50;

    private final Sites sites;
    private final DemandItems items;
    private final Register<DemandFacts, SiteDemand> register;
    private final DemandChoices choices;
    private final ItemWords words;

    DemandController(
            Sites sites,
            DemandItems items,
            Register<DemandFacts, SiteDemand> register,
            DemandChoices choices,
            ItemWords words) {
        this.sites = sites;
        this.items = items;
        this.register = register;
        this.choices = choices;
        this.words = words;
    }

    @ModelAttribute
    void lists(Model model) {
        choices.addTo(model);
    }

    @GetMapping("/sites/{id}/demand")
    String list(@PathVariable long id, @RequestParam(defaultValue = "1") int page, Model model) {
        Site site = site(id);
        var rows =
                items.findBySiteIdOrderByFactsInServiceDescFactsLabelAsc(id, PageRequest.of(Paging.index(page), ROWS));
        model.addAttribute("site", site.name());
        model.addAttribute("paging", new Paging("/sites/" + id + "/demand", page, ROWS, rows.getTotalElements()));
        model.addAttribute(
                "items",
                rows.map(item -> RegisterRow.of(item, words.typed(item.facts())))
                        .getContent());
        return "demand/list";
    }

    @GetMapping("/sites/{id}/demand/new")
    ModelAndView blank(@PathVariable long id, UnitSet units) {
        return page(site(id), null, new ModelAndView(FORM, "form", DemandForm.blank(units)));
    }

    @PostMapping("/sites/{id}/demand")
    ModelAndView add(
            @PathVariable long id,
            @ModelAttribute("form") DemandForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Site site = site(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<DemandFacts> facts = read(sent, site, form, 0);
        var saved =
                sent.save("label", by -> register.add(new SiteDemand(site, facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted(supply(id), redirect) : page(site, null, sent.refused(FORM));
    }

    /** Leads to the page that shows the item. */
    @GetMapping("/demand/{id}")
    String find(@PathVariable long id) {
        return "redirect:/sites/" + item(id).site().id() + "/demand#item-" + id;
    }

    @GetMapping("/demand/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        SiteDemand item = item(id);
        return page(item.site(), item, new ModelAndView(FORM, "form", DemandForm.from(item, units)));
    }

    @PostMapping("/demand/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") DemandForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        SiteDemand item = item(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<DemandFacts> facts = read(sent, item.site(), form, id);
        sent.change(register, item, facts);
        var saved = sent.save(
                "label", by -> register.revise(id, item.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent()
                ? sent.accepted(supply(item.site().id()), redirect)
                : page(item.site(), item, sent.refused(FORM));
    }

    private Optional<DemandFacts> read(Submission sent, Site site, DemandForm form, long id) {
        Optional<DemandFacts> facts = new DemandReader(sent, SiteBalances.station(site)).read(form);
        if (facts.isPresent()
                && items.existsBySiteIdAndFactsLabelIgnoreCaseAndIdNot(
                        site.id(), facts.get().label(), id)) {
            sent.reject("label", "register.taken");
        }
        return facts;
    }

    private static ModelAndView page(Site site, @Nullable SiteDemand item, ModelAndView page) {
        return page.addObject("site", site.name())
                .addObject("siteId", site.id())
                .addObject("changed", item == null ? null : item.facts().label())
                .addObject("target", item == null ? "/sites/" + site.id() + "/demand" : "/demand/" + item.id());
    }

    private static String supply(long siteId) {
        return "/sites/" + siteId + "/supply";
    }

    private Site site(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }

    private SiteDemand item(long id) {
        return items.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("demand item " + id));
    }
}
