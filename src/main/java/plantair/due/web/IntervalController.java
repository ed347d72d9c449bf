package plantair.due.web;

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
import plantair.due.DueInterval;
import plantair.due.DueKind;
import plantair.due.DueWords;
import plantair.due.IntervalFacts;
import plantair.due.SiteIntervals;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** The intervals of a site, seen and changed. */
@Controller
final class IntervalController {

    private static final String FORM = "due/interval";

    private final Sites sites;
    private final SiteIntervals intervals;
    private final Register<IntervalFacts, DueInterval> register;
    private final DueWords words;

    IntervalController(
            Sites sites, SiteIntervals intervals, Register<IntervalFacts, DueInterval> register, DueWords words) {
        this.sites = sites;
        this.intervals = intervals;
        this.register = register;
        this.words = words;
    }

    @GetMapping("/sites/{id}/intervals")
    String list(@PathVariable long id, Model model) {
        Site site = site(id);
        model.addAttribute("siteId", id);
        model.addAttribute("siteName", site.name());
        model.addAttribute(
                "rows",
                intervals.of(site).stream()
                        .map(interval -> IntervalRow.of(interval, words))
                        .toList());
        return "due/intervals";
    }

    @GetMapping("/sites/{id}/intervals/{kind}")
    ModelAndView edit(@PathVariable long id, @PathVariable String kind) {
        DueInterval interval = find(id, kind);
        return page(id, interval, new ModelAndView(FORM, "form", IntervalForm.of(interval)));
    }

    @PostMapping("/sites/{id}/intervals/{kind}")
    ModelAndView change(
            @PathVariable long id,
            @PathVariable String kind,
            @ModelAttribute("form") IntervalForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        DueInterval interval = find(id, kind);
        var sent = new Submission(form.getEdit(), "", errors, person);
        Optional<IntervalFacts> facts = form.read(sent, interval);
        sent.change(register, interval, facts);
        var saved = sent.save("months", by -> intervals.set(interval, facts.orElseThrow(), by));
        return saved.isPresent()
                ? sent.accepted("/sites/" + id + "/intervals", redirect)
                : page(id, interval, sent.refused(FORM));
    }

    private Site site(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }

    private DueInterval find(long id, String kind) {
        Site site = site(id);
        return DueKind.setBySites().stream()
                .filter(known -> known.name().equals(kind))
                .findFirst()
                .map(known -> intervals.of(site, known))
                .orElseThrow(() -> new NoSuchRecord("interval " + kind));
    }

    private ModelAndView page(long id, DueInterval interval, ModelAndView page) {
        return page.addObject("siteId", id)
                .addObject("siteName", interval.facts().site())
                .addObject("what", words.kind(interval.kind()))
                .addObject("kind", interval.kind().name())
                .addObject("usual", interval.kind().usualMonths());
    }
}
