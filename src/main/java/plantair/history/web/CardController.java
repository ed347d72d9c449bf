package plantair.history.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.history.PassByCards;
import plantair.web.UnitSet;

/** The card that hangs at a machine: how many seconds mean what. */
@Controller
final class CardController {

    private final PassByCards cards;
    private final CardViews views;

    CardController(PassByCards cards, CardViews views) {
        this.cards = cards;
        this.views = views;
    }

    @GetMapping("/compressors/{id:\\d+}/card")
    String show(@PathVariable long id, UnitSet units, Model model) {
        model.addAttribute("card", views.of(cards.of(id), units));
        return "compressors/card";
    }
}
