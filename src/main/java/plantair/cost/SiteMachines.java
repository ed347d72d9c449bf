package plantair.cost;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.history.Machine;
import plantair.history.WaitingCosts;
import plantair.supply.PoweredPart;
import plantair.supply.SiteSpecificPower;
import plantair.testrecord.Histories;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.MeasuredPowers;
import plantair.testrecord.NewestTests;
import plantair.testrecord.PumpUpTest;

/** The compressors in service of a site with what is known of their cost. */
@Service
@Transactional(readOnly = true)
public class SiteMachines {

    private final Compressors compressors;
    private final Histories histories;
    private final NewestTests newestTests;

    SiteMachines(Compressors compressors, Histories histories, NewestTests newestTests) {
        this.compressors = compressors;
        this.histories = histories;
        this.newestTests = newestTests;
    }

    /** All in service, by their tags. */
    public List<CostedMachine> of(long siteId) {
        List<Compressor> machines = compressors.findAllBySiteIdInAndPlateInServiceTrueOrderByPlateTag(List.of(siteId));
        Map<Long, MachineHistory> known =
                histories.of(machines.stream().map(Compressor::id).toList());
        Map<Long, List<PumpUpTest>> newest = newestTests.of(known.values());
        return machines.stream()
                .map(machine -> costed(
                        machine,
                        Objects.requireNonNull(known.get(machine.id())),
                        newest.getOrDefault(machine.id(), List.of())))
                .toList();
    }

    private static CostedMachine costed(Compressor compressor, MachineHistory history, List<PumpUpTest> newest) {
        return new CostedMachine(
                compressor,
                MeasuredPowers.of(history, newest),
                WaitingCosts.of(new Machine(compressor, history), newest));
    }

    /** What those together take for their air (S24); empty where of none flow and power were read in one test. */
    public static Optional<SiteSpecificPower> together(List<CostedMachine> machines) {
        List<PoweredPart> parts = machines.stream()
                .flatMap(machine -> machine.power().stream().map(power -> power.part(machine.tag())))
                .toList();
        return parts.isEmpty() ? Optional.empty() : Optional.of(SiteSpecificPower.of(parts));
    }
}
