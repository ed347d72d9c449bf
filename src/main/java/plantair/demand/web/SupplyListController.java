package plantair.demand.web;

import java.util.List;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.demand.SiteBalance;
import plantair.demand.SiteBalances;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.Paging;
import plantair.web.Status;
import plantair.web.UnitSet;

/** The sites with their answers; straight to the site where there is only one. */
@Controller
final class SupplyListController {

    private static final int ROWS = 20;

    private final Sites sites;
    private final SiteBalances balances;
    private final SupplyViews views;

    SupplyListController(Sites sites, SiteBalances balances, SupplyViews views) {
        this.sites = sites;
        this.balances = balances;
        this.views = views;
    }

    /** A site with its answer. */
    record SiteRow(long id, String name, Status verdict, String sentence) {}

    @GetMapping("/supply")
    String list(@RequestParam(defaultValue = "1") int page, UnitSet units, Model model) {
        var paging = new Paging("/supply", page, ROWS, sites.count());
        List<Site> shown = sites.findAllByOrderByFactsName(PageRequest.of(paging.index(), ROWS))
                .getContent();
        if (paging.total() == 1) {
            return "redirect:/sites/" + shown.get(0).id() + "/supply";
        }
        model.addAttribute("paging", paging);
        model.addAttribute(
                "sites",
                balances.of(shown).stream().map(balance -> row(balance, units)).toList());
        return "demand/sites";
    }

    private SiteRow row(SiteBalance balance, UnitSet units) {
        return new SiteRow(
                balance.siteId(),
                balance.site(),
                views.verdict(balance.answer()),
                views.sentence(balance, new Flows(units)));
    }
}
