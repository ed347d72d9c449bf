package plantair.demand.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.demand.SiteBalance;
import plantair.demand.web.SupplyView.Sum;
import plantair.demand.web.SupplyView.Totals;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Rounded;
import plantair.supply.Capacity;
import plantair.supply.CapacityPart;
import plantair.supply.DemandItem;
import plantair.supply.Margin.Verdict;
import plantair.supply.SupplyAndDemand;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.Status.Kind;
import plantair.web.UnitSet;

/** From the balance of a site to its page. */
@Component
final class SupplyViews {

    private final Words words;
    private final QuestionRows questions;
    private final MachineRows machines;
    private final ItemRows items;

    SupplyViews(Words words, QuestionRows questions, MachineRows machines, ItemRows items) {
        this.words = words;
        this.questions = questions;
        this.machines = machines;
        this.items = items;
    }

    SupplyView of(SiteBalance balance, UnitSet units) {
        var flows = new Flows(units);
        var format = QuantityFormat.of(units);
        Optional<SupplyAndDemand> answer = balance.answer();
        return new SupplyView(
                balance.siteId(),
                balance.site(),
                flows.unit(),
                balance.at() == null ? null : format.gauge(balance.at()),
                words.say(balance.choice().workingPressure() == null ? "supply.at.newest" : "supply.at.chosen"),
                format.absolute(balance.station()),
                verdict(answer),
                sentence(balance, flows),
                answer.map(known -> questions.of(balance, known, flows)).orElse(List.of()),
                machines.counted(balance, units),
                machines.leftOut(balance, format),
                balance.machines().isEmpty() ? null : totals(balance, answer, flows),
                machines.leaks(balance, format),
                balance.leaks().test() == null ? null : balance.leaks().test().testId(),
                items.of(balance, flows),
                answer.map(known -> notes(balance, known, flows)).orElse(List.of()));
    }

    Status verdict(Optional<SupplyAndDemand> answer) {
        return answer.map(known -> questions.status(known.withReserve().verdict()))
                .orElse(new Status(Kind.NONE, words.say("supply.verdict.none")));
    }

    /** The answer in one line. */
    String sentence(SiteBalance balance, Flows flows) {
        if (balance.machines().isEmpty()) {
            return words.say(balance.leftOut().isEmpty() ? "supply.sentence.noMachine" : "supply.sentence.noTest");
        }
        Optional<SupplyAndDemand> answer = balance.answer();
        if (answer.isEmpty()) {
            return words.say("supply.sentence.noDemand");
        }
        MeasuredFlow net = answer.get().net();
        MeasuredFlow need = answer.get().need();
        return words.say("supply.sentence", flows.both(net), flows.both(need), flows.unit());
    }

    private static Totals totals(SiteBalance balance, Optional<SupplyAndDemand> answer, Flows flows) {
        Capacity capacity = balance.capacity();
        return new Totals(
                sum(capacity.total(), flows),
                sum(balance.leaks().flow(), flows),
                sum(balance.net(), flows),
                sum(balance.netWithoutLargest(), flows),
                capacity.largest().map(CapacityPart::label).orElseThrow(),
                answer.map(known -> sum(known.need(), flows)).orElse(null),
                balance.worn().map(known -> sum(known.need(), flows)).orElse(null));
    }

    private static Sum sum(MeasuredFlow flow, Flows flows) {
        return new Sum(flows.both(flow), flows.drawn(flow.flow()), flows.drawn(flow.standardUncertainty()));
    }

    private List<String> notes(SiteBalance balance, SupplyAndDemand answer, Flows flows) {
        List<String> notes = new ArrayList<>();
        answer.withoutReserve()
                .load()
                .ifPresentOrElse(
                        load -> notes.add(words.say("supply.note.load", Rounded.places(100 * load, 0))),
                        () -> notes.add(words.say("supply.note.nothingLeft")));
        String largest = answer.capacity().largest().map(CapacityPart::label).orElseThrow();
        Verdict alone = answer.withoutLargest().verdict();
        if (alone != Verdict.ENOUGH) {
            notes.add(
                    words.say(alone == Verdict.NOT_ENOUGH ? "supply.note.lossNot" : "supply.note.lossCould", largest));
        }
        List<DemandItem> stopped = balance.stoppedByLoss(answer);
        if (!stopped.isEmpty()) {
            notes.add(words.say("supply.note.loss", largest, flows.whole(answer.netWithoutLargest()), labels(stopped)));
        }
        if (balance.hasGaps()) {
            notes.add(words.say("supply.note.gaps"));
        }
        return notes;
    }

    private static String labels(List<DemandItem> items) {
        return String.join("; ", items.stream().map(DemandItem::label).toList());
    }
}
