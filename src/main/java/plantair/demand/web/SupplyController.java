package plantair.demand.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.demand.SiteBalance;
import plantair.demand.SiteBalances;
import plantair.demand.WhatIf;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** Supply and demand of a site, as it is or as it would be; what is supposed stands in the address and is not stored. */
@Controller
final class SupplyController {

    private final Sites sites;
    private final SiteBalances balances;
    private final SupplyViews views;
    private final DemandChoices choices;
    private final Words words;

    SupplyController(Sites sites, SiteBalances balances, SupplyViews views, DemandChoices choices, Words words) {
        this.sites = sites;
        this.balances = balances;
        this.views = views;
        this.choices = choices;
        this.words = words;
    }

    @GetMapping("/sites/{id}/supply")
    String show(
            @PathVariable long id,
            @ModelAttribute("form") WhatIfForm form,
            BindingResult errors,
            UnitSet units,
            Person person,
            Model model,
            HttpServletResponse response) {
        Site site = sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
        SiteBalance balance = balances.of(site);
        List<Choice> machines = machines(balance);
        form.fill(units);
        if (!form.isBlank()) {
            var sent = new Submission(new EditForm(), "", errors, person);
            Set<Long> ids = machines.stream()
                    .map(machine -> Long.valueOf(machine.code()))
                    .collect(Collectors.toSet());
            WhatIf whatIf = new WhatIfReader(sent, balance.station()).read(form, ids, words.say("supply.whatIf.item"));
            if (errors.hasErrors()) {
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            } else {
                balance = balances.of(site, whatIf);
                model.addAttribute("supposed", true);
            }
        }
        model.addAttribute("supply", views.of(balance, units));
        model.addAttribute("machines", machines);
        choices.addTo(model);
        return "demand/supply";
    }

    /** The machines that count now, which may be taken out. */
    private static List<Choice> machines(SiteBalance balance) {
        return balance.machines().stream()
                .map(machine -> new Choice(String.valueOf(machine.id()), machine.tag()))
                .toList();
    }
}
