package plantair.offer.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.cost.CostedMachine;
import plantair.cost.PowerText;
import plantair.offer.web.CompareView.NotCompared;
import plantair.offer.web.CompareView.Row;
import plantair.offer.web.Comparison.Chosen;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.PowerUnit;
import plantair.quantity.Rounded;
import plantair.quantity.SpecificPowerUnit;
import plantair.supply.AirPrice;
import plantair.supply.Offer;
import plantair.supply.OfferDifference;
import plantair.supply.YearlyCost;
import plantair.testrecord.MeasuredPower;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;
import plantair.web.Words;

/** From a comparison to its part of the page. */
@Component
final class CompareViews {

    /** Beyond this part of the absolute pressure an efficiency taken as the same is no fair guess; own choice. */
    private static final double FAR = 0.1;

    /** An offer or a machine with what it comes to at the site. */
    private record Side(
            String label,
            String href,
            String stated,
            @Nullable MeasuredPower measured,
            Offer.AtSite at) {}

    CompareView of(Comparison comparison, List<CostedMachine> machines, UnitSet units) {
        List<Side> offers = new ArrayList<>();
        List<NotCompared> not = new ArrayList<>();
        for (Chosen chosen : comparison.offers()) {
            Offer offer = chosen.offer();
            chosen.at(comparison)
                    .ifPresentOrElse(
                            at -> offers.add(
                                    new Side(offer.label(), "/offers/" + chosen.id(), chosen.stated(), null, at)),
                            () -> not.add(
                                    new NotCompared(offer.label(), offer.basis().name())));
        }
        FlowRate need = need(comparison, offers);
        var format = QuantityFormat.of(units);
        return new CompareView(
                format.gauge(comparison.pressure()),
                format.absolute(comparison.intake().station()),
                format.flow(need),
                QuantityFormat.amount(comparison.hours(), 0),
                comparison.tariff() == null ? null : tariff(comparison),
                Objects.requireNonNullElse(comparison.currency(), ""),
                Stream.concat(offers.stream(), machines.stream().flatMap(one -> side(one, comparison).stream()))
                        .map(side -> row(side, comparison, need, format))
                        .toList(),
                not,
                verdicts(offers, format));
    }

    private static FlowRate need(Comparison comparison, List<Side> offers) {
        return Optional.ofNullable(comparison.need())
                .or(() -> offers.stream()
                        .map(side -> side.at().freeAir())
                        .min(Comparator.comparingDouble(FlowRate::cubicMetresPerSecond)))
                .orElse(new FlowRate(0));
    }

    private static String tariff(Comparison comparison) {
        String money = Rounded.significant(Objects.requireNonNull(comparison.tariff()), 3);
        return comparison.currency() == null ? money : money + " " + comparison.currency();
    }

    /** A machine as if it were offered by what it was measured to do. */
    private static Optional<Side> side(CostedMachine machine, Comparison comparison) {
        return machine.power()
                .filter(measured -> measured.output().at().pascals() > 0)
                .flatMap(measured -> new Offer(
                                machine.tag(),
                                measured.output().flow(),
                                FlowBasis.INTAKE,
                                comparison.intake(),
                                measured.output().at(),
                                measured.input())
                        .at(comparison.intake(), comparison.pressure())
                        .map(at -> new Side(
                                machine.tag(),
                                "/compressors/" + machine.compressor().id(),
                                measured.output().on().toString(),
                                measured,
                                at)));
    }

    private static Row row(Side side, Comparison comparison, FlowRate need, QuantityFormat format) {
        Offer.AtSite at = side.at();
        double u = side.measured() == null ? 0 : side.measured().relativeU();
        YearlyCost cost = new AirPrice(at.specificPower(), u, comparison.hours(), comparison.tariff())
                .of(MeasuredFlow.of(need, 0, FlowBasis.INTAKE));
        return new Row(
                side.label(),
                side.href(),
                side.stated(),
                side.measured() != null,
                u > 0 ? format.flow(at.freeAir(), u) : format.flow(at.freeAir()),
                format.flow(at.standard()),
                Rounded.places(at.power().in(PowerUnit.KW), 1) + " " + PowerUnit.KW.symbol(),
                PowerText.number(at.specificPower(), u, SpecificPowerUnit.KW_PER_100_CFM),
                PowerText.number(at.specificPower(), u, SpecificPowerUnit.KW_PER_CUBIC_METRE_PER_MINUTE),
                format.percent(at.moved() - 1),
                Math.abs(at.moved() - 1) > FAR,
                side.measured() == null && at.freeAir().cubicMetresPerSecond() < need.cubicMetresPerSecond(),
                QuantityFormat.amount(cost.kilowattHours(), u * cost.kilowattHours()),
                cost.money() == null ? null : QuantityFormat.amount(cost.money(), u * cost.money()));
    }

    private static List<Words> verdicts(List<Side> offers, QuantityFormat format) {
        Optional<Side> least = offers.stream()
                .min(Comparator.comparingDouble(
                        side -> side.at().specificPower().joulesPerCubicMetre()));
        List<Words> verdicts = new ArrayList<>();
        offers.stream()
                .filter(side -> least.filter(best -> best != side).isPresent())
                .forEach(side -> {
                    Side best = least.orElseThrow();
                    var difference = OfferDifference.between(side.at(), best.at());
                    verdicts.add(verdict(
                            "offers.power." + (difference.isPowerTold() ? "told" : "not"),
                            side,
                            best,
                            format.percent(difference.power()),
                            format.percent(difference.powerTolerance())));
                    verdicts.add(verdict(
                            "offers.flow."
                                    + (difference.isFlowTold() ? difference.flow() > 0 ? "more" : "less" : "not"),
                            side,
                            best,
                            format.percent(Math.abs(difference.flow())),
                            format.percent(difference.flowTolerance())));
                });
        return verdicts;
    }

    private static Words verdict(String code, Side side, Side best, String difference, String tolerance) {
        return Words.of(code, side.label(), best.label(), difference, tolerance);
    }
}
