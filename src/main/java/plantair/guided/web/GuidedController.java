package plantair.guided.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** The page of a guided test, and the two ways to send it: by its button, and by script when the signal is back. */
@Controller
class GuidedController {

    private static final String PAGE = "guided/page";

    private final Compressors compressors;
    private final PumpUpTests tests;
    private final GuidedPage page;
    private final DraftForms drafts;
    private final SendTest sender;
    private final Clock clock;

    GuidedController(
            Compressors compressors,
            PumpUpTests tests,
            GuidedPage page,
            DraftForms drafts,
            SendTest sender,
            Clock clock) {
        this.compressors = compressors;
        this.tests = tests;
        this.page = page;
        this.drafts = drafts;
        this.sender = sender;
        this.clock = clock;
    }

    @GetMapping("/guided/{id:\\d+}")
    @Transactional(readOnly = true)
    public String form(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable String draft,
            @RequestParam(defaultValue = "") String tag,
            @RequestParam(defaultValue = "") String anywhere,
            UnitSet units,
            Person person,
            Model model) {
        Compressor compressor = find(id);
        GuidedForm form = blank(compressor, units, person);
        if (draft != null) {
            drafts.find(draft, person).ifPresent(stored -> {
                drafts.fill(form, stored);
                model.addAttribute("draftVersion", stored.version());
            });
        }
        if (!tag.isEmpty()) {
            form.setTagRead(tag);
        }
        if (!anywhere.isEmpty()) {
            form.setAnywhere("true");
        }
        return show(model, form, compressor, person);
    }

    private GuidedForm blank(Compressor compressor, UnitSet units, Person person) {
        Optional<PumpUpTest> last = tests.findFirstByCompressorIdOrderByPerformedAtDescIdDesc(compressor.id());
        GuidedForm form = GuidedForm.blank(
                units,
                compressor.site().facts().zoneId(),
                clock,
                person.displayName(),
                last.map(PumpUpTest::volumes).orElse(List.of()));
        form.name(last.map(PumpUpTest::instruments).orElse(List.of()));
        return form;
    }

    private String show(Model model, GuidedForm form, Compressor compressor, Person person) {
        model.addAttribute("form", form);
        page.fill(model, compressor, form, person);
        return PAGE;
    }

    @PostMapping("/guided/{id:\\d+}")
    public String save(
            @PathVariable long id,
            @ModelAttribute("form") GuidedForm form,
            BindingResult errors,
            @RequestParam MultiValueMap<String, String> sent,
            UnitSet units,
            Person person,
            Model model,
            RedirectAttributes redirect,
            HttpServletResponse response) {
        Compressor compressor = find(id);
        Optional<UUID> key = drafts.key(form, errors);
        if (key.isPresent()) {
            var outcome = sender.send(
                    form, errors, compressor, drafts.copy(form, key.get(), id, sent, person), units, person);
            if (outcome.state() != SendTest.State.QUESTIONS) {
                if (outcome.state() == SendTest.State.RECORDED) {
                    Flash.say(redirect, "test.saved");
                }
                return "redirect:" + outcome.href();
            }
            model.addAttribute("warnings", outcome.warnings());
        }
        form.complete(units);
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        model.addAttribute("answered", true);
        return show(model, form, compressor, person);
    }

    /** By script; says what came of it. */
    @PostMapping("/guided/{id:\\d+}/send")
    @ResponseBody
    public Map<String, String> send(
            @PathVariable long id,
            @ModelAttribute("form") GuidedForm form,
            BindingResult errors,
            @RequestParam MultiValueMap<String, String> sent,
            UnitSet units,
            Person person) {
        Compressor compressor = find(id);
        Optional<UUID> key = drafts.key(form, errors);
        if (key.isEmpty()) {
            return Map.of("state", SendTest.State.QUESTIONS.name(), "href", "/guided/" + id);
        }
        var outcome =
                sender.send(form, errors, compressor, drafts.copy(form, key.get(), id, sent, person), units, person);
        return Map.of("state", outcome.state().name(), "href", outcome.href());
    }

    private Compressor find(long id) {
        return compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
    }
}
