package plantair.cost.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.cost.CostedMachine;
import plantair.cost.web.CostView.Cause;
import plantair.history.WaitingCost;
import plantair.quantity.Rounded;
import plantair.trend.CostOfWaiting;
import plantair.trend.CostOfWaiting.Estimate;
import plantair.web.QuantityFormat;
import plantair.web.Words;

/** What the lost output of a machine costs (T14), as on its own page; at the tariff of the question. */
final class LostOutput {

    private static final double PERCENT = 100;

    private LostOutput() {}

    static Cause of(CostedMachine machine, CostQuestion question) {
        WaitingCost waiting = machine.waiting().at(question.tariff());
        Optional<CostOfWaiting> cost = waiting.cost();
        Estimate energy = cost.map(CostOfWaiting::kilowattHours).orElse(null);
        Estimate money = cost.map(CostOfWaiting::money).orElse(null);
        Estimate bar = question.tariff() == null ? energy : money;
        return new Cause(
                Words.of("cost.cause.lost", machine.tag()),
                "/compressors/" + machine.compressor().id(),
                cost.map(CostOfWaiting::lostPart)
                        .map(part -> text(part, PERCENT) + " %")
                        .orElse(null),
                null,
                energy == null ? null : text(energy, 1),
                money == null ? null : text(money, 1),
                bar == null ? null : Rounded.places(bar.value(), 2),
                state(waiting, cost));
    }

    private static @Nullable String state(WaitingCost waiting, Optional<CostOfWaiting> cost) {
        if (waiting.comparison() == null) {
            return "cost.lost.nothingToCompare";
        }
        if (cost.isEmpty()) {
            return "cost.lost.cannotBeTold";
        }
        return cost.get().kilowattHours() == null ? "cost.lost.missing" : null;
    }

    private static String text(Estimate estimate, double factor) {
        return QuantityFormat.amount(factor * estimate.value(), factor * estimate.standardUncertainty());
    }
}
