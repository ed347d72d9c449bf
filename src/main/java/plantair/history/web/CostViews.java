package plantair.history.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.history.Machine;
import plantair.history.WaitingCost;
import plantair.history.WaitingCosts;
import plantair.history.web.CostView.Fact;
import plantair.trend.CostOfWaiting;
import plantair.trend.CostOfWaiting.Estimate;
import plantair.web.QuantityFormat;

/** From what is known of the cost of waiting to its part of the compressor's page. */
@Component
final class CostViews {

    private final WaitingCosts costs;

    CostViews(WaitingCosts costs) {
        this.costs = costs;
    }

    CostView of(Machine machine) {
        WaitingCost waiting = costs.of(machine);
        Optional<CostOfWaiting> cost = waiting.cost();
        return new CostView(
                waiting.compressorId(),
                waiting.siteId(),
                "history.cost." + state(waiting, cost),
                cost.map(CostOfWaiting::money)
                        .map(money -> text(money) + " " + waiting.site().currency())
                        .orElse(null),
                cost.map(CostViews::facts).orElse(List.of()),
                cost.isEmpty()
                        ? List.of()
                        : waiting.inputs().missing().stream()
                                .map(input -> "history.cost.missing." + input.name())
                                .toList(),
                Objects.toString(waiting.powerReadOn(), null));
    }

    private static String state(WaitingCost waiting, Optional<CostOfWaiting> cost) {
        if (waiting.comparison() == null) {
            return "nothingToCompare";
        }
        if (cost.isEmpty()) {
            return "cannotBeTold";
        }
        return waiting.byLine() ? "byLine" : "byLastTest";
    }

    private static List<Fact> facts(CostOfWaiting cost) {
        List<Fact> facts = new ArrayList<>();
        add(facts, "lost", percent(cost.lostPart()), "%");
        add(facts, "perAir", percent(cost.energyPerAir()), "%");
        add(facts, "hours", cost.hours(), "h");
        add(facts, "energy", cost.kilowattHours(), "kWh");
        return facts;
    }

    private static void add(List<Fact> facts, String name, @Nullable Estimate estimate, String unit) {
        if (estimate != null) {
            facts.add(new Fact("history.cost." + name, text(estimate) + " " + unit));
        }
    }

    private static Estimate percent(Estimate part) {
        return new Estimate(100 * part.value(), 100 * part.standardUncertainty());
    }

    private static String text(Estimate estimate) {
        return QuantityFormat.amount(estimate.value(), estimate.standardUncertainty());
    }
}
