package plantair.history.web;

import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.history.LimitFacts;
import plantair.history.PlantLimits;
import plantair.history.SiteLimits;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** The limits of a site, seen and changed. */
@Controller
final class LimitsController {

    private static final String FORM = "plant/limits";

    private final Sites sites;
    private final SiteLimits siteLimits;
    private final Register<LimitFacts, PlantLimits> register;

    LimitsController(Sites sites, SiteLimits siteLimits, Register<LimitFacts, PlantLimits> register) {
        this.register = register;
        this.sites = sites;
        this.siteLimits = siteLimits;
    }

    @GetMapping("/sites/{id}/limits")
    ModelAndView show(@PathVariable long id) {
        PlantLimits limits = siteLimits.of(find(id));
        return page(new ModelAndView(FORM, "form", LimitsForm.of(limits)), limits);
    }

    @PostMapping("/sites/{id}/limits")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") LimitsForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        PlantLimits limits = siteLimits.of(find(id));
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<LimitFacts> facts =
                form.read(sent).map(typed -> new LimitFacts(limits.facts().name(), typed));
        sent.change(register, limits, facts);
        var saved = sent.save("watchBelow", by -> siteLimits.set(limits, facts.orElseThrow(), by));
        return saved.isPresent()
                ? sent.accepted("/sites/" + id + "/limits", redirect)
                : page(sent.refused(FORM), limits);
    }

    private static ModelAndView page(ModelAndView page, PlantLimits limits) {
        return page.addObject("site", limits.facts().name()).addObject("own", limits.isSet());
    }

    private Site find(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }
}
