package plantair.storage.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.quantity.Rounded;
import plantair.quantity.VesselVolume;
import plantair.storage.web.StorageQuestion.Switching;
import plantair.storage.web.StorageView.Cycle;
import plantair.storage.web.StorageView.Fact;
import plantair.supply.AirEvent;
import plantair.supply.StoredAir;
import plantair.supply.SwitchCycles;
import plantair.web.Choices;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.UnitSet;
import plantair.web.Words;

/** From a question about storage to its answer. */
@Component
final class StorageViews {

    private final Choices choices;

    StorageViews(Choices choices) {
        this.choices = choices;
    }

    StorageView of(StorageQuestion question, UnitSet units) {
        var event = new EventWords(question, units);
        var format = QuantityFormat.of(units);
        return new StorageView(
                event.answer(),
                event.more(),
                cycles(question, format),
                band(question, format),
                facts(question, event, format),
                event.working());
    }

    private List<Cycle> cycles(StorageQuestion question, QuantityFormat format) {
        VesselVolume volume = question.volume();
        Optional<StoredAir> band = question.band();
        if (volume == null || band.isEmpty()) {
            return List.of();
        }
        return question.switching().stream()
                .map(machine ->
                        cycle(machine, new SwitchCycles(band.get(), volume, machine.capacity()), question, format))
                .toList();
    }

    private Cycle cycle(Switching machine, SwitchCycles switched, StorageQuestion question, QuantityFormat format) {
        var control = machine.control();
        String worst = Rounded.significant(switched.worst(), 3);
        String now =
                question.switching().size() == 1 ? Rounded.significant(switched.perHour(question.goesOn()), 3) : "";
        if (control == null) {
            return new Cycle(machine.label(), format.flow(machine.capacity()), "", worst, "", now, "", status("NONE"));
        }
        return new Cycle(
                machine.label(),
                format.flow(machine.capacity()),
                control.name(),
                worst,
                Rounded.places(control.mostPerHour(), 0),
                now,
                format.vessel(switched.leastVolume(control)),
                status(
                        !switched.isShort(control)
                                ? "GOOD"
                                : switched.isShort(control, question.goesOn()) ? "ALARM" : "WATCH"));
    }

    private Status status(String kind) {
        var of = Status.Kind.valueOf(kind);
        return new Status(of, choices.label("storage.cycles", of));
    }

    private static List<Words> band(StorageQuestion question, QuantityFormat format) {
        return question
                .effect()
                .map(effect -> Words.of(
                        "storage.band",
                        format.gauge(question.lowest()),
                        format.percent(effect.power()),
                        format.percent(effect.use())))
                .stream()
                .toList();
    }

    private static List<Fact> facts(StorageQuestion question, EventWords event, QuantityFormat format) {
        List<Fact> facts = new ArrayList<>();
        if (question.volume() != null) {
            facts.add(new Fact("storage.volume", format.vessel(question.volume()), Words.of("storage.volume.chosen")));
        }
        facts.add(new Fact("storage.station", format.absolute(question.station()), Words.of("storage.station.site")));
        facts.add(new Fact(
                "storage.capacity",
                event.flow(question.capacity()),
                question.capacityTyped()
                        ? Words.of("storage.typed")
                        : Words.of(
                                question.switching().isEmpty() ? "storage.capacity.none" : "storage.capacity.measured",
                                String.join(
                                        ", ",
                                        question.switching().stream()
                                                .map(Switching::label)
                                                .toList()),
                                format.gauge(question.cutIn()))));
        if (!question.left().isEmpty()) {
            facts.add(new Fact("storage.left", String.join(", ", question.left()), Words.of("storage.left.far")));
        }
        facts.add(new Fact(
                "storage.leaks",
                event.flow(question.leaks()),
                Words.of("storage.leaks." + question.leaksFrom().name())));
        question.airEvent()
                .map(AirEvent::goesOn)
                .ifPresent(flow ->
                        facts.add(new Fact("storage.goesOn", format.flow(flow), Words.of("storage.goesOn.both"))));
        return facts;
    }
}
