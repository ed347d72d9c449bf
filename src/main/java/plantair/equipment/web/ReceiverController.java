package plantair.equipment.web;

import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.equipment.ReceiverPagePart;
import plantair.equipment.Receivers;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Search;
import plantair.web.UnitSet;

/** The receivers of all sites, and the page of each. */
@Controller
final class ReceiverController {

    private static final int ROWS = 50;

    private final Receivers receivers;
    private final HazardWords hazards;
    private final ObjectProvider<ReceiverPagePart> parts;

    ReceiverController(Receivers receivers, HazardWords hazards, ObjectProvider<ReceiverPagePart> parts) {
        this.receivers = receivers;
        this.hazards = hazards;
        this.parts = parts;
    }

    @GetMapping("/receivers")
    String list(
            @ModelAttribute("search") Search search,
            @RequestParam(defaultValue = "1") int page,
            UnitSet units,
            Model model) {
        var rows = receivers.findByPartOfTag(search.part(), PageRequest.of(Paging.index(page), ROWS));
        model.addAttribute("paging", new Paging(search.address("/receivers"), page, ROWS, rows.getTotalElements()));
        var against = hazards.of(rows.getContent());
        model.addAttribute(
                "receivers",
                rows.map(row -> ReceiverView.of(row, row.site(), against.getOrDefault(row.id(), List.of()), units))
                        .getContent());
        return "receivers/list";
    }

    @GetMapping("/receivers/{id}")
    String show(@PathVariable long id, UnitSet units, Model model) {
        var receiver = receivers.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("receiver " + id));
        var against = hazards.of(List.of(receiver)).getOrDefault(id, List.of());
        model.addAttribute("receiver", ReceiverView.of(receiver, receiver.site(), against, units));
        parts.orderedStream().forEach(part -> model.addAttribute(part.attribute(), part.of(receiver, units)));
        return "receivers/show";
    }
}
