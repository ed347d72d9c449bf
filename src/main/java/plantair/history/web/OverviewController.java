package plantair.history.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.EnumSet;
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
import plantair.due.DueList;
import plantair.history.WorstFirst;
import plantair.history.web.OverviewFilter.Show;
import plantair.site.Sites;
import plantair.trend.Standing;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.FieldChecks;
import plantair.web.Paging;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** The plant overview: one line a machine. */
@Controller
final class OverviewController {

    private static final int SIZE = 25;

    private final WorstFirst machines;
    private final OverviewRows rows;
    private final DueList dueList;
    private final OverdueRows overdue;
    private final FirstSteps firstSteps;
    private final Sites sites;
    private final Choices choices;

    OverviewController(
            WorstFirst machines,
            OverviewRows rows,
            DueList dueList,
            OverdueRows overdue,
            FirstSteps firstSteps,
            Sites sites,
            Choices choices) {
        this.machines = machines;
        this.rows = rows;
        this.dueList = dueList;
        this.overdue = overdue;
        this.firstSteps = firstSteps;
        this.sites = sites;
        this.choices = choices;
    }

    @GetMapping("/")
    String overview(
            @ModelAttribute("filter") OverviewFilter filter,
            BindingResult errors,
            @RequestParam(defaultValue = "1") int page,
            UnitSet units,
            Model model,
            HttpServletResponse response) {
        var checks = new FieldChecks(errors);
        long site = checks.id("site", filter.getSite(), false).orElse(0L);
        Optional<Standing> standing = checks.optionalChoice("standing", filter.getStanding(), Standing.class);
        Show show = checks.optionalChoice("show", filter.getShow(), Show.class).orElse(Show.IN_SERVICE);
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        var wanted = standing.map(EnumSet::of).orElse(EnumSet.allOf(Standing.class));
        var found = machines.page(site, filter.getTag().strip(), show == Show.ALL, wanted, page, SIZE);
        String href = filter.address();
        List<DueEntry> due = dueList.all();
        model.addAttribute("overdue", overdue.of(due, site));
        model.addAttribute("rows", rows.of(found.getContent(), due, units));
        model.addAttribute("paging", new Paging(href, page, SIZE, found.getTotalElements()));
        model.addAttribute("flowUnit", QuantityFormat.of(units).flowUnit());
        model.addAttribute(
                "filtered",
                errors.hasErrors()
                        || !filter.getTag().isBlank()
                        || site != 0
                        || standing.isPresent()
                        || show == Show.ALL);
        model.addAttribute("steps", firstSteps.steps());
        return "plant/overview";
    }

    @ModelAttribute("sites")
    List<Choice> sites() {
        return sites.findAllByOrderByFactsName().stream()
                .map(site -> new Choice(String.valueOf(site.id()), site.name()))
                .toList();
    }

    @ModelAttribute("standings")
    List<Choice> standings() {
        return choices.of("history.standing", Standing.class);
    }

    @ModelAttribute("shows")
    List<Choice> shows() {
        return choices.of("history.show", Show.class);
    }
}
