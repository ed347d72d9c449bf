package plantair.leaktest.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.leaktest.FoundLeak;
import plantair.leaktest.FoundLeaks;
import plantair.leaktest.LeakStanding;
import plantair.leaktest.LeakStep;
import plantair.leaktest.LeakSteps;
import plantair.leaktest.RecordFoundLeak;
import plantair.leaktest.StepKind;
import plantair.register.Submission;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** A found leak with what became of it. */
@Controller
final class LeakStepController {

    private static final String PAGE = "leaktest/leak";
    private static final String WITHDRAW = "leaktest/withdraw";

    private final Sites sites;
    private final FoundLeaks leaks;
    private final LeakSteps steps;
    private final RecordFoundLeak record;
    private final Choices choices;
    private final MessageSource messages;
    private final Clock clock;

    LeakStepController(
            Sites sites,
            FoundLeaks leaks,
            LeakSteps steps,
            RecordFoundLeak record,
            Choices choices,
            MessageSource messages,
            Clock clock) {
        this.sites = sites;
        this.leaks = leaks;
        this.steps = steps;
        this.record = record;
        this.choices = choices;
        this.messages = messages;
        this.clock = clock;
    }

    @GetMapping("/leaks/{id}")
    ModelAndView show(@PathVariable long id, UnitSet units, Locale locale, Person person) {
        return page(find(id), new ModelAndView(PAGE, "form", blank(id, person)), units, locale);
    }

    @PostMapping("/leaks/{id}/steps")
    ModelAndView add(
            @PathVariable long id,
            @ModelAttribute("form") StepForm form,
            BindingResult errors,
            UnitSet units,
            Locale locale,
            RedirectAttributes redirect,
            Person person) {
        if (form.getKind().equals(StepKind.WITHDRAWN.name())) {
            errors.rejectValue("kind", "leakStep.withdraw.elsewhere");
        }
        return save(find(id), form, errors, PAGE, new Shown(units, locale), redirect, person);
    }

    @GetMapping("/leaks/{id}/withdraw")
    ModelAndView withdrawal(@PathVariable long id, UnitSet units, Locale locale, Person person) {
        return page(find(id), new ModelAndView(WITHDRAW, "form", blank(id, person)), units, locale);
    }

    @PostMapping("/leaks/{id}/withdraw")
    ModelAndView withdraw(
            @PathVariable long id,
            @ModelAttribute("form") StepForm form,
            BindingResult errors,
            UnitSet units,
            Locale locale,
            RedirectAttributes redirect,
            Person person) {
        form.setKind(StepKind.WITHDRAWN.name());
        return save(find(id), form, errors, WITHDRAW, new Shown(units, locale), redirect, person);
    }

    private record Shown(UnitSet units, Locale locale) {}

    private ModelAndView save(
            FoundLeak leak,
            StepForm form,
            BindingResult errors,
            String view,
            Shown shown,
            RedirectAttributes redirect,
            Person person) {
        var sent = new Submission(form.getEdit(), "", errors, person);
        Optional<LeakStep.Draft> draft = form.read(sent, leak.id(), leak.draft().foundOn(), today(leak));
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), by.by()));
        return saved.isPresent()
                ? sent.accepted("/leaks/" + leak.id(), redirect)
                : page(leak, sent.refused(view), shown.units(), shown.locale());
    }

    private StepForm blank(long id, Person person) {
        int count = steps.findByLeakIdOrderByPosition(id).size();
        return StepForm.blank(count, today(find(id)), person.displayName());
    }

    private LocalDate today(FoundLeak leak) {
        return LocalDate.now(clock.withZone(leak.zoneId()));
    }

    private FoundLeak find(long id) {
        return leaks.findById(id).orElseThrow(() -> new NoSuchRecord("found leak " + id));
    }

    private ModelAndView page(FoundLeak leak, ModelAndView page, UnitSet units, Locale locale) {
        var words = new LeakWords(units, messages, locale);
        List<LeakStep> done = steps.findByLeakIdOrderByPosition(leak.id());
        @Nullable LeakStep last = done.isEmpty() ? null : done.get(done.size() - 1);
        return page.addObject("leak", FoundLeakView.of(leak, last, words))
                .addObject("siteId", leak.siteId())
                .addObject(
                        "siteName",
                        sites.findById(leak.siteId()).map(site -> site.name()).orElse(""))
                .addObject("steps", FoundLeakView.steps(done, leak.zoneId(), words))
                .addObject("next", next(LeakStanding.of(last)));
    }

    private List<Choice> next(LeakStanding standing) {
        return Stream.of(StepKind.REPAIRED, StepKind.TIGHT, StepKind.STILL_LEAKS)
                .filter(standing::mayBecome)
                .map(kind -> new Choice(kind.name(), choices.label("leakStep.kind", kind)))
                .toList();
    }
}
