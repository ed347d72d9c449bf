package plantair.equipment.web;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.Choice;

/** The sites that a form offers. */
@Component
final class SiteList {

    private final Sites sites;

    SiteList(Sites sites) {
        this.sites = sites;
    }

    List<Choice> choices() {
        return sites.findAllByOrderByFactsName().stream()
                .map(site -> new Choice(String.valueOf(site.id()), site.name()))
                .toList();
    }

    /** The chosen site. */
    Optional<Site> read(Submission sent, String typed) {
        Optional<Site> site = sent.checks().id("site", typed, true).flatMap(sites::findById);
        if (site.isEmpty() && !typed.isBlank()) {
            sent.reject("site", "equipment.site.unknown");
        }
        return site;
    }
}
