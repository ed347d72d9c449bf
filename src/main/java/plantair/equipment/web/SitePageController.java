package plantair.equipment.web;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.equipment.Compressors;
import plantair.equipment.PipePieces;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.UnitSet;

/** The page of one site: what the register says of it, and its equipment. */
@Controller
final class SitePageController {

    private final Sites sites;
    private final Compressors compressors;
    private final Receivers receivers;
    private final PipePieces pipes;
    private final HazardWords hazards;

    SitePageController(
            Sites sites, Compressors compressors, Receivers receivers, PipePieces pipes, HazardWords hazards) {
        this.sites = sites;
        this.compressors = compressors;
        this.receivers = receivers;
        this.pipes = pipes;
        this.hazards = hazards;
    }

    @GetMapping("/sites/{id}")
    String show(@PathVariable long id, UnitSet units, Model model) {
        Site site = sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
        model.addAttribute("site", SitePage.of(site, units));
        model.addAttribute(
                "compressors",
                compressors.findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(id).stream()
                        .map(SitePage.Machine::of)
                        .toList());
        List<Receiver> vessels = receivers.findAllBySiteIdOrderByFactsInServiceDescFactsTagAsc(id);
        var against = hazards.of(vessels, hazards.today(site));
        model.addAttribute(
                "receivers",
                vessels.stream()
                        .map(one -> ReceiverView.of(one, site, against.getOrDefault(one.id(), List.of()), units))
                        .toList());
        model.addAttribute(
                "pipes",
                pipes.findAllBySiteIdOrderByFactsInServiceDescFactsTagAsc(id).stream()
                        .map(pipe -> PipeView.of(pipe, site, units))
                        .toList());
        return "sites/show";
    }
}
