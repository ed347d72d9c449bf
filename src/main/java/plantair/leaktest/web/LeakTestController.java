package plantair.leaktest.web;

import java.util.Locale;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.leaktest.LeakTest;
import plantair.leaktest.LeakTestKind;
import plantair.leaktest.LeakTests;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.UnitSet;

/** Shows the leak tests of a site. */
@Controller
final class LeakTestController {

    private static final int ROWS = 25;

    private final Sites sites;
    private final LeakTests tests;
    private final LeakTestViews views;

    LeakTestController(Sites sites, LeakTests tests, LeakTestViews views) {
        this.sites = sites;
        this.tests = tests;
        this.views = views;
    }

    @GetMapping("/sites/{id}/leak-tests")
    String list(
            @PathVariable long id,
            @RequestParam(defaultValue = "1") int page,
            UnitSet units,
            Locale locale,
            Model model) {
        Site site = site(id);
        Page<LeakTest> found = tests.findLast(id, PageRequest.of(Paging.index(page), ROWS));
        model.addAttribute("siteId", id);
        model.addAttribute("siteName", site.name());
        model.addAttribute("kinds", LeakTestKind.values());
        model.addAttribute("paging", new Paging("/sites/" + id + "/leak-tests", page, ROWS, found.getTotalElements()));
        model.addAttribute(
                "rows", found.map(test -> views.row(test, units, locale)).getContent());
        return "leaktest/list";
    }

    @GetMapping("/leak-tests/{id}")
    String show(@PathVariable long id, UnitSet units, Locale locale, Model model) {
        LeakTest test = tests.findById(id).orElseThrow(() -> new NoSuchRecord("leak test " + id));
        model.addAttribute("test", views.of(test, site(test.siteId()), units, locale));
        return "leaktest/show";
    }

    private Site site(long id) {
        return sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
    }
}
