package plantair.demand.web;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import plantair.demand.DemandKind;
import plantair.demand.NozzleEdge;
import plantair.demand.StatedAt;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowBasis;
import plantair.supply.BlastNozzle;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.UnitChoices;

/** The lists that the forms of what takes air offer. */
@Component
final class DemandChoices {

    private final Choices choices;

    DemandChoices(Choices choices) {
        this.choices = choices;
    }

    void addTo(Model model) {
        model.addAttribute("kinds", choices.of("demand.kind", DemandKind.class));
        model.addAttribute("bases", bases());
        model.addAttribute("places", choices.of("demand.stated", StatedAt.class));
        model.addAttribute("nozzles", choices.of("demand.nozzle", BlastNozzle.class));
        model.addAttribute("edges", choices.of("demand.edge", NozzleEdge.class));
        model.addAttribute("flows", UnitChoices.flow());
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("bores", UnitChoices.bore());
        model.addAttribute("durations", UnitChoices.duration());
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
    }

    /** Nothing takes a displacement. */
    private List<Choice> bases() {
        return Stream.of(FlowBasis.values())
                .filter(basis -> basis != FlowBasis.DISPLACEMENT)
                .map(basis -> new Choice(basis.name(), choices.label("basis", basis)))
                .toList();
    }
}
