package plantair.equipment.web;

import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.equipment.Receivers;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.UnitSet;

/** The receivers of all sites, and the page of each. */
@Controller
final class ReceiverController {

    private static final int ROWS = 50;

    private final Receivers receivers;
    private final HazardWords hazards;

    ReceiverController(Receivers receivers, HazardWords hazards) {
        this.receivers = receivers;
        this.hazards = hazards;
    }

    @GetMapping("/receivers")
    String list(@RequestParam(defaultValue = "1") int page, UnitSet units, Model model) {
        var paging = new Paging("/receivers", page, ROWS, receivers.count());
        var rows = receivers.findAllByOrderByFactsInServiceDescSiteFactsNameAscFactsTagAsc(
                PageRequest.of(paging.index(), ROWS));
        model.addAttribute("paging", paging);
        model.addAttribute(
                "receivers",
                rows.map(row -> ReceiverView.of(row, row.site(), hazards, units))
                        .getContent());
        return "receivers/list";
    }

    @GetMapping("/receivers/{id}")
    String show(@PathVariable long id, UnitSet units, Model model) {
        var receiver = receivers.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("receiver " + id));
        model.addAttribute("receiver", ReceiverView.of(receiver, receiver.site(), hazards, units));
        return "receivers/show";
    }
}
