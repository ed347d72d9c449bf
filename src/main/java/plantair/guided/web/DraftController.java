package plantair.guided.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
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
import plantair.guided.DraftContent;
import plantair.guided.DraftDesk;
import plantair.guided.DraftDesk.Fit;
import plantair.guided.StoredDraft;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** Keeps copies of forms that are being filled in, and shows two versions of one side by side. */
@Controller
class DraftController {

    private final DraftDesk desk;
    private final DraftForms forms;
    private final DraftViews views;

    DraftController(DraftDesk desk, DraftForms forms, DraftViews views) {
        this.desk = desk;
        this.forms = forms;
        this.views = views;
    }

    /** By script, now and then; says whether it fits what stands here. */
    @PostMapping("/guided/{id:\\d+}/draft")
    @ResponseBody
    public Map<String, Object> save(
            @PathVariable long id,
            @ModelAttribute("form") GuidedForm form,
            BindingResult errors,
            @RequestParam MultiValueMap<String, String> sent,
            Person person) {
        Optional<UUID> key = forms.key(form, errors);
        if (key.isEmpty() || DraftForms.content(sent).length() > DraftContent.LONGEST) {
            return Map.of("state", "REFUSED", "version", 0, "href", "");
        }
        var arrival = desk.save(forms.copy(form, key.get(), id, sent, person));
        String href = arrival.fit() == Fit.RECORDED ? "/tests/" + arrival.testId() : "/guided/drafts/" + key.get();
        return Map.of("state", arrival.fit().name(), "version", arrival.version(), "href", href);
    }

    @GetMapping("/guided/drafts/{key}")
    @Transactional(readOnly = true)
    public String compare(@PathVariable String key, Person person, Model model) {
        List<StoredDraft> versions = desk.versions(known(key), person.username());
        model.addAttribute("draft", views.compare(versions));
        return "guided/compare";
    }

    @PostMapping("/guided/drafts/{key}")
    public String choose(@PathVariable String key, @RequestParam(defaultValue = "0") int place, Person person) {
        desk.choose(known(key), place, person.username());
        StoredDraft main = desk.versions(known(key), person.username()).get(0);
        return main.testId() == null
                ? "redirect:/guided/" + main.compressorId() + "?draft=" + key + "&chosen=true"
                : "redirect:/tests/" + main.testId();
    }

    private static UUID known(String key) {
        return DraftForms.parse(key).orElseThrow(() -> new NoSuchRecord("draft " + key));
    }
}
