package plantair.cost.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Objects;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.cost.CostedMachine;
import plantair.cost.SiteMachines;
import plantair.leaktest.SiteLeak;
import plantair.leaktest.SiteLeaks;
import plantair.quantity.FixedUnit;
import plantair.quantity.SpecificPowerUnit;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.NoSuchRecord;
import plantair.web.QuantityFormat;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** What the air of a site costs. Nothing is stored: the address holds what a person would rather reckon with. */
@Controller
class CostController {

    private final Sites sites;
    private final SiteMachines siteMachines;
    private final SiteLeaks siteLeaks;
    private final CostReader reader;
    private final AirCostViews views;

    CostController(Sites sites, SiteMachines siteMachines, SiteLeaks siteLeaks, CostReader reader, AirCostViews views) {
        this.sites = sites;
        this.siteMachines = siteMachines;
        this.siteLeaks = siteLeaks;
        this.reader = reader;
        this.views = views;
    }

    @GetMapping("/sites/{id}/cost")
    @Transactional(readOnly = true)
    public String cost(
            @PathVariable long id,
            @ModelAttribute("form") CostForm form,
            BindingResult errors,
            UnitSet units,
            Model model,
            HttpServletResponse response) {
        Site site = sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
        List<CostedMachine> machines = siteMachines.of(id);
        List<SiteLeak> leaks = siteLeaks.lately(id);
        form.propose(AirCostViews.unit(units));
        var format = QuantityFormat.of(units);
        reader.read(form, site.facts(), machines, leaks, errors).ifPresent(question -> {
            model.addAttribute("cost", views.of(question, id, machines, units));
            model.addAttribute("currency", question.currency());
            model.addAttribute("inMoney", question.tariff() != null);
            model.addAttribute(
                    "machines",
                    machines.stream()
                            .map(machine -> MachineRow.of(machine, question, format))
                            .filter(Objects::nonNull)
                            .toList());
        });
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        fill(model, site, leaks, format);
        return "cost/page";
    }

    private static void fill(Model model, Site site, List<SiteLeak> leaks, QuantityFormat format) {
        model.addAttribute("siteId", site.id());
        model.addAttribute("siteName", site.name());
        model.addAttribute(
                "leakChoices",
                leaks.stream()
                        .map(leak -> new Choice(
                                String.valueOf(leak.testId()),
                                leak.on() + ": " + format.flow(leak.flow().flow())))
                        .toList());
        model.addAttribute(
                "specifics",
                List.of(
                        choice(SpecificPowerUnit.KW_PER_100_CFM),
                        choice(SpecificPowerUnit.KW_PER_CUBIC_METRE_PER_MINUTE)));
        model.addAttribute("hourUnit", UnitChoices.only(FixedUnit.HOUR));
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
        model.addAttribute(
                "tariffs",
                List.of(new Choice(
                        FixedUnit.PER_KILOWATT_HOUR.code(),
                        (Objects.requireNonNullElse(site.facts().currency(), "") + " "
                                        + FixedUnit.PER_KILOWATT_HOUR.symbol())
                                .strip())));
    }

    private static Choice choice(SpecificPowerUnit unit) {
        return new Choice(unit.code(), unit.symbol());
    }
}
