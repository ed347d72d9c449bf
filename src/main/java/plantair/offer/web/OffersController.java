package plantair.offer.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Objects;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.cost.SiteMachines;
import plantair.offer.Offers;
import plantair.offer.RegisteredOffer;
import plantair.quantity.FixedUnit;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** The offers of a site: those open side by side, and the register of all. The address holds the whole question. */
@Controller
class OffersController {

    private static final int ROWS = 50;

    private final Sites sites;
    private final Offers offers;
    private final CompareReader reader;
    private final CompareViews views;
    private final SiteMachines machines;

    OffersController(Sites sites, Offers offers, CompareReader reader, CompareViews views, SiteMachines machines) {
        this.sites = sites;
        this.offers = offers;
        this.reader = reader;
        this.views = views;
        this.machines = machines;
    }

    @GetMapping("/sites/{id}/offers")
    @Transactional(readOnly = true)
    public String offers(
            @PathVariable long id,
            @ModelAttribute("form") CompareForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "1") int page,
            UnitSet units,
            Model model,
            HttpServletResponse response) {
        Site site = sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
        List<RegisteredOffer> open = offers.findFirst50BySiteIdAndFactsOpenTrueOrderByFactsLabelAsc(id);
        boolean untouched = form.isUntouched();
        if (untouched) {
            form.fill(open, units);
        }
        // that there are not yet two offers is no error of anybody
        BindingResult found = untouched ? new BeanPropertyBindingResult(form, "form") : errors;
        reader.read(form, site.facts(), open, found)
                .ifPresent(comparison -> model.addAttribute("compared", views.of(comparison, machines.of(id), units)));
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        fill(model, site, open);
        list(model, site, page, units);
        return "offers/list";
    }

    private void list(Model model, Site site, int page, UnitSet units) {
        var paging = new Paging("/sites/" + site.id() + "/offers", page, ROWS, offers.countBySiteId(site.id()));
        var rows = offers.findAllBySiteIdOrderByFactsOpenDescFactsLabelAsc(
                site.id(), PageRequest.of(paging.index(), ROWS));
        model.addAttribute("paging", paging);
        model.addAttribute("offers", rows.map(row -> OfferView.of(row, units)).getContent());
    }

    private static void fill(Model model, Site site, List<RegisteredOffer> open) {
        model.addAttribute("siteId", site.id());
        model.addAttribute("siteName", site.name());
        model.addAttribute("canCompare", open.size() > 1);
        model.addAttribute(
                "choices",
                open.stream()
                        .map(offer -> new Choice(
                                String.valueOf(offer.id()), offer.facts().label()))
                        .toList());
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("temperatures", UnitChoices.temperature());
        model.addAttribute("flows", UnitChoices.flow());
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
        model.addAttribute("hourUnit", UnitChoices.only(FixedUnit.HOUR));
        String currency = site.facts().currency();
        model.addAttribute(
                "tariffs",
                List.of(new Choice(
                        FixedUnit.PER_KILOWATT_HOUR.code(),
                        Objects.requireNonNullElse(currency, "") + " " + FixedUnit.PER_KILOWATT_HOUR.symbol())));
    }
}
