package plantair.due.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.due.DueEntry;
import plantair.due.DueKind;
import plantair.due.DueList;
import plantair.due.DueState;
import plantair.due.DueWords;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.FieldChecks;
import plantair.web.Paging;

/** What is due, overdue first. */
@Controller
final class DueController {

    private static final int ROWS = 50;

    private final DueList list;
    private final DueWords words;
    private final Sites sites;
    private final Choices choices;

    DueController(DueList list, DueWords words, Sites sites, Choices choices) {
        this.list = list;
        this.words = words;
        this.sites = sites;
        this.choices = choices;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute(
                "sites",
                sites.findAllByOrderByFactsName().stream()
                        .map(site -> new Choice(String.valueOf(site.id()), site.name()))
                        .toList());
        model.addAttribute(
                "kinds",
                Arrays.stream(DueKind.values())
                        .map(kind -> new Choice(kind.name(), words.kind(kind)))
                        .toList());
        model.addAttribute("states", choices.of("due.state", DueState.class));
    }

    @GetMapping("/due")
    String list(
            @ModelAttribute("filter") DueFilter filter,
            BindingResult errors,
            @RequestParam(defaultValue = "1") int page,
            Model model,
            HttpServletResponse response) {
        var checks = new FieldChecks(errors);
        Optional<Long> site = checks.id("site", filter.getSite(), false);
        Optional<DueKind> kind = checks.optionalChoice("kind", filter.getKind(), DueKind.class);
        Optional<DueState> state = checks.optionalChoice("state", filter.getState(), DueState.class);
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        // an instrument belongs to every site
        List<DueEntry> found = list.all().stream()
                .filter(entry ->
                        site.isEmpty() || entry.siteId() == null || site.get().equals(entry.siteId()))
                .filter(entry -> kind.isEmpty() || kind.get() == entry.kind())
                .filter(entry -> state.isEmpty() || state.get() == entry.state())
                .toList();
        String href = "/due?site=" + site.map(String::valueOf).orElse("") + "&kind="
                + kind.map(Enum::name).orElse("") + "&state="
                + state.map(Enum::name).orElse("");
        var paging = new Paging(href, page, ROWS, found.size());
        model.addAttribute("paging", paging);
        model.addAttribute(
                "rows",
                found.stream()
                        .skip((long) paging.index() * ROWS)
                        .limit(ROWS)
                        .map(entry -> DueRow.of(entry, words))
                        .toList());
        model.addAttribute("filtered", site.isPresent() || kind.isPresent() || state.isPresent());
        model.addAttribute("overdue", found.stream().filter(DueEntry::isOverdue).count());
        return "due/list";
    }
}
