package plantair.leaktest.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;
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
import plantair.leaktest.FoundLeak;
import plantair.leaktest.FoundLeakDraft;
import plantair.leaktest.FoundLeakLine;
import plantair.leaktest.FoundLeaks;
import plantair.leaktest.LeakComponent;
import plantair.leaktest.LeakPriority;
import plantair.leaktest.LeakStanding;
import plantair.leaktest.RecordFoundLeak;
import plantair.leaktest.SiteLeaks;
import plantair.leaktest.StepKind;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.supply.LeakEstimate;
import plantair.supply.SizedBy;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** The leak survey of a site: its list, and a leak found. */
@Controller
final class FoundLeakController {

    private static final String FORM = "leaktest/leak-form";
    private static final int ROWS = 50;

    private final Sites sites;
    private final FoundLeaks leaks;
    private final SiteLeaks newest;
    private final RecordFoundLeak record;
    private final Choices choices;
    private final MessageSource messages;
    private final Clock clock;

    FoundLeakController(
            Sites sites,
            FoundLeaks leaks,
            SiteLeaks newest,
            RecordFoundLeak record,
            Choices choices,
            MessageSource messages,
            Clock clock) {
        this.sites = sites;
        this.leaks = leaks;
        this.newest = newest;
        this.record = record;
        this.choices = choices;
        this.messages = messages;
        this.clock = clock;
    }

    @GetMapping("/sites/{id}/leaks")
    String list(
            @PathVariable long id,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(required = false) @Nullable LeakStanding standing,
            UnitSet units,
            Locale locale,
            Model model) {
        Site site = site(id);
        var words = new LeakWords(units, messages, locale);
        Page<FoundLeakLine> found = find(id, standing, PageRequest.of(Paging.index(page), ROWS));
        String href = "/sites/" + id + "/leaks" + (standing == null ? "" : "?standing=" + standing);
        model.addAttribute("siteId", id);
        model.addAttribute("siteName", site.name());
        model.addAttribute("standing", standing == null ? "" : standing.name());
        model.addAttribute("standings", LeakStanding.values());
        model.addAttribute("paging", new Paging(href, page, ROWS, found.getTotalElements()));
        model.addAttribute(
                "rows",
                found.map(line -> FoundLeakView.of(line.leak(), line.last(), words))
                        .getContent());
        sum(id, words, model);
        return "leaktest/leaks";
    }

    private Page<FoundLeakLine> find(long siteId, @Nullable LeakStanding standing, Pageable page) {
        if (standing == null) {
            return leaks.findLines(siteId, page);
        }
        return switch (standing) {
            case OPEN -> leaks.findOpenLines(siteId, page);
            case REPAIRED -> leaks.findLines(siteId, StepKind.REPAIRED, page);
            case VERIFIED -> leaks.findLines(siteId, StepKind.TIGHT, page);
            case WITHDRAWN -> leaks.findLines(siteId, StepKind.WITHDRAWN, page);
        };
    }

    /** What the open leaks are thought to lose, beside what was measured. */
    private void sum(long siteId, LeakWords words, Model model) {
        List<FoundLeak> open = leaks.findOpen(siteId);
        List<LeakEstimate> sized = open.stream()
                .flatMap(leak -> leak.draft().size().estimate(leak.tag()).stream())
                .toList();
        model.addAttribute("openCount", open.size());
        model.addAttribute("unsized", open.size() - sized.size());
        model.addAttribute("openSum", sized.isEmpty() ? "" : LeakWords.flow(words.format(), LeakEstimate.sum(sized)));
        newest.newest(siteId).ifPresent(test -> {
            model.addAttribute("newest", test);
            model.addAttribute("newestFlow", LeakWords.flow(words.format(), test.flow()));
            model.addAttribute("newestAt", words.format().gauge(test.at()));
        });
    }

    @GetMapping("/sites/{id}/leaks/new")
    ModelAndView blank(@PathVariable long id, UnitSet units, Person person) {
        Site site = site(id);
        var form = FoundLeakForm.blank(units, today(site), person.displayName());
        return form(site, new ModelAndView(FORM, "form", form));
    }

    @PostMapping("/sites/{id}/leaks")
    ModelAndView save(
            @PathVariable long id,
            @ModelAttribute("form") FoundLeakForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Site site = site(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<FoundLeakDraft> draft = form.read(sent, id, site.facts(), today(site));
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), by.by()));
        return saved.isPresent()
                ? sent.accepted("/leaks/" + saved.get().id(), redirect)
                : form(site, sent.refused(FORM));
    }

    private ModelAndView form(Site site, ModelAndView page) {
        return page.addObject("siteId", site.id())
                .addObject("siteName", site.name())
                .addObject("components", choices.of("foundLeak.component", LeakComponent.class))
                .addObject("ways", choices.of("foundLeak.sizeBy", SizedBy.class))
                .addObject("priorities", choices.of("foundLeak.priority", LeakPriority.class))
                .addObject("flows", UnitChoices.flow())
                .addObject("bores", UnitChoices.bore())
                .addObject("pressures", UnitChoices.pressure());
    }

    private LocalDate today(Site site) {
        return LocalDate.now(clock.withZone(site.facts().zoneId()));
    }

    private Site site(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }
}
