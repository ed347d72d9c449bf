package plantair.site.web;

import java.util.List;
import java.util.Optional;
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
import plantair.quantity.FixedUnit;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.SiteFacts;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** List and form of the sites. The page of one site shows its equipment and stands there. */
@Controller
final class SiteController {

    private static final String FORM = "sites/form";
    private static final int ROWS = 50;

    private final Sites sites;
    private final Register<SiteFacts, Site> register;

    SiteController(Sites sites, Register<SiteFacts, Site> register) {
        this.sites = sites;
        this.register = register;
    }

    @ModelAttribute("zones")
    List<Choice> zones() {
        return Zones.choices();
    }

    @ModelAttribute
    void units(Model model) {
        model.addAttribute("lengths", UnitChoices.elevation());
        model.addAttribute("barometers", UnitChoices.barometer());
        model.addAttribute("tariffs", UnitChoices.only(FixedUnit.PER_KILOWATT_HOUR));
    }

    @GetMapping("/sites")
    String list(@RequestParam(defaultValue = "1") int page, UnitSet units, Model model) {
        var paging = new Paging("/sites", page, ROWS, sites.count());
        var rows = sites.findAllByOrderByFactsName(PageRequest.of(paging.index(), ROWS));
        model.addAttribute("paging", paging);
        model.addAttribute("sites", rows.map(site -> SiteView.of(site, units)).getContent());
        return "sites/list";
    }

    @GetMapping("/sites/new")
    ModelAndView blank(UnitSet units) {
        return new ModelAndView(FORM, "form", SiteForm.blank(units));
    }

    @PostMapping("/sites")
    ModelAndView add(
            @ModelAttribute("form") SiteForm form, BindingResult errors, RedirectAttributes redirect, Person person) {
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<SiteFacts> facts = form.read(sent);
        checkName(sent, facts, 0);
        var saved = sent.save("name", by -> register.add(new Site(facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted("/sites/" + saved.get().id(), redirect) : sent.refused(FORM);
    }

    @GetMapping("/sites/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        Site site = find(id);
        return new ModelAndView(FORM, "form", SiteForm.from(site, units)).addObject("changed", site.name());
    }

    @PostMapping("/sites/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") SiteForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Site site = find(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<SiteFacts> facts = form.read(sent);
        checkName(sent, facts, id);
        sent.change(register, site, facts);
        var saved =
                sent.save("name", by -> register.revise(id, site.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent()
                ? sent.accepted("/sites/" + id, redirect)
                : sent.refused(FORM).addObject("changed", site.name());
    }

    private Site find(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }

    private void checkName(Submission sent, Optional<SiteFacts> facts, long id) {
        if (facts.isPresent()
                && sites.existsByFactsNameIgnoreCaseAndIdNot(facts.get().name(), id)) {
            sent.reject("name", "register.taken");
        }
    }
}
