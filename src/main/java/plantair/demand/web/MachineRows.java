package plantair.demand.web;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.demand.CountedMachine;
import plantair.demand.LeftOutMachine;
import plantair.demand.SiteBalance;
import plantair.leaktest.SiteLeak;
import plantair.quantity.GaugePressure;
import plantair.supply.CapacityPart;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** The supply side of a site in words and units. */
@Component
final class MachineRows {

    private final Words words;

    MachineRows(Words words) {
        this.words = words;
    }

    List<MachineRow> counted(SiteBalance balance, UnitSet units) {
        Optional<CapacityPart> largest = balance.capacity().largest();
        var flows = new Flows(units);
        var format = QuantityFormat.of(units);
        return balance.machines().stream()
                .map(machine -> row(machine, largest, flows, format))
                .toList();
    }

    private static MachineRow row(
            CountedMachine machine, Optional<CapacityPart> largest, Flows flows, QuantityFormat format) {
        return new MachineRow(
                machine.id(),
                machine.tag(),
                flows.both(machine.part().measured()),
                flows.drawn(machine.part().flow()),
                flows.about(machine.output().flow()) + " " + flows.unit() + ", "
                        + format.gauge(machine.output().at()),
                machine.output().testId(),
                machine.output().on().toString(),
                largest.filter(part -> part == machine.part()).isPresent());
    }

    List<LeftOutRow> leftOut(SiteBalance balance, QuantityFormat format) {
        return balance.leftOut().stream()
                .map(machine -> new LeftOutRow(
                        machine.id(),
                        machine.tag(),
                        why(machine, balance.at(), format),
                        machine.why().isGap(),
                        machine.output() == null ? null : machine.output().testId()))
                .toList();
    }

    private String why(LeftOutMachine machine, @Nullable GaugePressure at, QuantityFormat format) {
        if (machine.output() == null || at == null) {
            return words.say("supply.leftOut." + machine.why());
        }
        return words.say(
                "supply.leftOut." + machine.why(),
                machine.output().on().toString(),
                format.gauge(machine.output().at()),
                format.gauge(at));
    }

    String leaks(SiteBalance balance, QuantityFormat format) {
        SiteLeak test = balance.leaks().test();
        return test == null
                ? words.say("supply.leaks." + balance.leaks().from())
                : words.say("supply.leaks.TEST", test.on().toString(), format.gauge(test.at()));
    }
}
