package plantair.leaktest.web;

import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.leaktest.Entry.Correction;
import plantair.leaktest.LeakTest;
import plantair.leaktest.LeakTestDraft;
import plantair.leaktest.LeakTestKind;
import plantair.leaktest.LeakTests;
import plantair.leaktest.RecordLeakTest;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** Records leak tests, and corrections of them. */
@Controller
final class LeakTestFormController {

    private static final String FORM = "leaktest/form";

    private final Sites sites;
    private final LeakTests tests;
    private final LeakTestReader reader;
    private final LeakTestFormPage page;
    private final RecordLeakTest record;
    private final Clock clock;

    LeakTestFormController(
            Sites sites,
            LeakTests tests,
            LeakTestReader reader,
            LeakTestFormPage page,
            RecordLeakTest record,
            Clock clock) {
        this.sites = sites;
        this.tests = tests;
        this.reader = reader;
        this.page = page;
        this.record = record;
        this.clock = clock;
    }

    @GetMapping("/sites/{id}/leak-tests/new")
    ModelAndView blank(
            @PathVariable long id,
            @RequestParam(defaultValue = "LOAD_TIMES") LeakTestKind kind,
            UnitSet units,
            Person person) {
        Site site = site(id);
        LeakTestForm form =
                LeakTestForm.blank(kind, units, site.facts().zoneId(), clock.instant(), person.displayName());
        page.offer(form, site, null, units);
        return show(new ModelAndView(FORM, "form", form), form, site, null, units);
    }

    @GetMapping("/leak-tests/{old}/correct")
    ModelAndView correct(@PathVariable("old") long id, UnitSet units) {
        LeakTest old = find(id);
        Optional<LeakTest> later = tests.findByEntrySupersedesId(id);
        if (later.isPresent()) {
            return new ModelAndView("redirect:/leak-tests/" + later.get().id());
        }
        LeakTestForm form = LeakTestForm.from(old.draft(), units);
        Site site = site(old.siteId());
        page.offer(form, site, old.draft(), units);
        return show(new ModelAndView(FORM, "form", form), form, site, old, units);
    }

    /** The button for more rows: the form as typed, unchecked, with rows more. */
    @PostMapping(
            path = {"/sites/{id}/leak-tests", "/leak-tests/{old}/correct"},
            params = "more")
    ModelAndView more(
            @PathVariable(name = "id", required = false) @Nullable Long siteId,
            @PathVariable(name = "old", required = false) @Nullable Long oldId,
            @ModelAttribute("form") LeakTestForm form,
            UnitSet units) {
        LeakTest old = oldId == null ? null : find(oldId);
        form.more(units);
        return show(new ModelAndView(FORM), form, site(old == null ? siteId : Long.valueOf(old.siteId())), old, units);
    }

    @PostMapping({"/sites/{id}/leak-tests", "/leak-tests/{old}/correct"})
    ModelAndView save(
            @PathVariable(name = "id", required = false) @Nullable Long siteId,
            @PathVariable(name = "old", required = false) @Nullable Long oldId,
            @ModelAttribute("form") LeakTestForm form,
            BindingResult errors,
            UnitSet units,
            RedirectAttributes redirect,
            Person person) {
        LeakTest old = oldId == null ? null : find(oldId);
        Site site = site(old == null ? siteId : Long.valueOf(old.siteId()));
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<LeakTestDraft> draft = reader.read(form, site, old == null ? null : old.draft(), sent);
        Correction correction = old == null ? null : correction(old, form, sent);
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), correction, by.by()));
        return saved.isPresent()
                ? sent.accepted("/leak-tests/" + saved.get().id(), redirect)
                : show(sent.refused(FORM), form, site, old, units);
    }

    private static Correction correction(LeakTest old, LeakTestForm form, Submission sent) {
        String reason = form.getEdit().getReason();
        if (reason.isBlank()) {
            sent.reject("edit.reason", "text.missing");
        }
        return new Correction(old.id(), reason.strip(), Boolean.parseBoolean(form.getWithdrawn()));
    }

    private LeakTest find(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("leak test " + id));
    }

    private Site site(@Nullable Long id) {
        return Optional.ofNullable(id).flatMap(sites::findById).orElseThrow(() -> new NoSuchRecord("site " + id));
    }

    private ModelAndView show(ModelAndView view, LeakTestForm form, Site site, @Nullable LeakTest old, UnitSet units) {
        return page.fill(view, form, site, units)
                .addObject("isCorrection", old != null)
                .addObject("oldId", old == null ? null : old.id())
                .addObject("back", old == null ? "/sites/" + site.id() + "/leak-tests" : "/leak-tests/" + old.id())
                .addObject(
                        "target",
                        old == null ? "/sites/" + site.id() + "/leak-tests" : "/leak-tests/" + old.id() + "/correct");
    }
}
