package plantair.cost.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.cost.CostedMachine;
import plantair.cost.web.CostView.Cause;
import plantair.equipment.Control;
import plantair.leaktest.SiteLeak;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Rounded;
import plantair.quantity.SpecificPowerUnit;
import plantair.supply.AirPrice;
import plantair.supply.YearlyCost;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;
import plantair.web.Words;

/** What the leaks of a site cost, in words. */
final class LeakCosts {

    private final CostQuestion question;
    private final long siteId;
    private final QuantityFormat format;
    private final SpecificPowerUnit unit;

    LeakCosts(CostQuestion question, long siteId, UnitSet units) {
        this.question = question;
        this.siteId = siteId;
        this.format = QuantityFormat.of(units);
        this.unit = AirCostViews.unit(units);
    }

    private Optional<YearlyCost> cost() {
        SiteLeak leak = question.leak();
        return leak == null ? Optional.empty() : question.price().map(price -> price.of(leak.flow()));
    }

    Words lead() {
        SiteLeak leak = question.leak();
        if (leak == null) {
            return Words.of("cost.lead.noLeak");
        }
        if (cost().isEmpty()) {
            return Words.of("cost.lead.noPower", flow(leak.flow()));
        }
        YearlyCost cost = cost().get();
        if (!cost.isTold()) {
            return Words.of("cost.lead.notTold", flow(leak.flow()));
        }
        return Words.of(
                cost.money() == null ? "cost.lead.energy" : "cost.lead.money",
                flow(leak.flow()),
                yearly(cost),
                power(cost) + " kW");
    }

    Optional<Cause> cause() {
        SiteLeak leak = question.leak();
        if (leak == null) {
            return Optional.empty();
        }
        Optional<YearlyCost> cost = cost();
        return Optional.of(new Cause(
                Words.of("cost.cause.leaks", leak.on().toString()),
                "/leak-tests/" + leak.testId(),
                flow(leak.flow()),
                cost.map(LeakCosts::power).orElse(null),
                cost.map(LeakCosts::energy).orElse(null),
                cost.map(LeakCosts::money).orElse(null),
                cost.map(this::bar).orElse(null),
                cost.isPresent() ? null : "cost.leak.noPower"));
    }

    private @Nullable String bar(YearlyCost cost) {
        Double length = question.tariff() == null ? Double.valueOf(cost.kilowattHours()) : cost.money();
        return length == null ? null : Rounded.places(length, 2);
    }

    /** The leak after repairs beside the one before. */
    List<Words> repairs() {
        SiteLeak before = question.leak();
        SiteLeak after = question.after();
        if (before == null || after == null) {
            return List.of();
        }
        List<Words> words = new ArrayList<>();
        words.add(Words.of(
                "cost.repairs.flows",
                before.on().toString(),
                flow(before.flow()),
                after.on().toString(),
                flow(after.flow())));
        boolean less = isLess(after, before);
        question.price()
                .map(price ->
                        less ? price.saved(before.flow(), after.flow()) : price.saved(after.flow(), before.flow()))
                .ifPresent(cost -> words.add(
                        cost.isTold()
                                ? Words.of(less ? "cost.repairs.saved" : "cost.repairs.more", yearly(cost), power(cost))
                                : Words.of("cost.repairs.notTold")));
        return words;
    }

    private static boolean isLess(SiteLeak after, SiteLeak before) {
        return after.flow().flow().cubicMetresPerSecond()
                <= before.flow().flow().cubicMetresPerSecond();
    }

    /** A machine at fixed speed only idles longer once leaks are mended. */
    List<Words> idle(List<CostedMachine> machines) {
        SiteLeak leak = question.leak();
        Optional<AirPrice> price = question.price();
        if (leak == null || price.isEmpty()) {
            return List.of();
        }
        Double part = question.idlePart();
        SiteLeak after = question.after();
        if (part != null && after != null && isLess(after, leak)) {
            return List.of(Words.of(
                    "cost.idle.repairs",
                    format.percent(part),
                    yearly(price.get().ofWhatIdles(part).saved(leak.flow(), after.flow())),
                    yearly(price.get().saved(leak.flow(), after.flow()))));
        }
        if (part != null) {
            return List.of(Words.of(
                    "cost.idle.saves",
                    format.percent(part),
                    yearly(price.get().ofWhatIdles(part).of(leak.flow())),
                    yearly(price.get().of(leak.flow()))));
        }
        String idling = String.join(
                ", ",
                machines.stream()
                        .filter(machine -> machine.compressor().facts().plate().control() == Control.LOAD_UNLOAD)
                        .map(CostedMachine::tag)
                        .toList());
        return idling.isEmpty() ? List.of() : List.of(Words.of("cost.idle.asks", idling));
    }

    /** The steps, each with its numbers. */
    List<Words> working() {
        SiteLeak leak = question.leak();
        Optional<YearlyCost> cost = cost();
        if (leak == null || cost.isEmpty()) {
            return List.of();
        }
        List<Words> steps = new ArrayList<>();
        FlowUnit flowUnit = unit == SpecificPowerUnit.KW_PER_100_CFM ? FlowUnit.CFM : FlowUnit.CUBIC_METRE_PER_MINUTE;
        String kilowatts = Rounded.significant(cost.get().kilowatts(), 5);
        String energy = Rounded.significant(cost.get().kilowattHours(), 6);
        steps.add(Words.of(
                "cost.working.power." + unit.name(),
                Rounded.significant(
                        Objects.requireNonNull(question.specific()).value().in(unit), 5),
                Rounded.significant(leak.flow().flow().in(flowUnit), 5),
                kilowatts));
        steps.add(Words.of("cost.working.energy", kilowatts, Rounded.places(question.hours(), 0), energy));
        if (cost.get().money() != null) {
            steps.add(Words.of(
                    "cost.working.money",
                    energy,
                    Rounded.significant(Objects.requireNonNull(question.tariff()), 5),
                    Rounded.significant(cost.get().money(), 6),
                    question.currency()));
        }
        return steps;
    }

    private String flow(MeasuredFlow measured) {
        FlowRate flow = measured.flow();
        double u = measured.standardUncertainty().cubicMetresPerSecond();
        return flow.cubicMetresPerSecond() > 0 && u > 0
                ? format.flow(flow, measured.standardUncertainty().over(flow))
                : format.flow(flow);
    }

    private String yearly(YearlyCost cost) {
        return cost.money() == null ? energy(cost) + " kWh" : (money(cost) + " " + question.currency()).strip();
    }

    private static String power(YearlyCost cost) {
        return Rounded.significant(cost.kilowatts(), 2);
    }

    private static String energy(YearlyCost cost) {
        return QuantityFormat.amount(cost.kilowattHours(), cost.kilowattHours() * cost.relativeU());
    }

    private static @Nullable String money(YearlyCost cost) {
        return cost.money() == null ? null : QuantityFormat.amount(cost.money(), cost.money() * cost.relativeU());
    }
}
