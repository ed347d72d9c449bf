package plantair.cost;

import java.util.List;
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
import plantair.testrecord.MeasuredPowers;

/** The compressors in service of a site with what is known of their cost. */
@Service
@Transactional(readOnly = true)
public class SiteMachines {

    private final Compressors compressors;
    private final Histories histories;
    private final MeasuredPowers powers;
    private final WaitingCosts waiting;

    SiteMachines(Compressors compressors, Histories histories, MeasuredPowers powers, WaitingCosts waiting) {
        this.compressors = compressors;
        this.histories = histories;
        this.powers = powers;
        this.waiting = waiting;
    }

    /** All in service, by their tags. */
    public List<CostedMachine> of(long siteId) {
        return compressors.findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(siteId).stream()
                .filter(Compressor::isInService)
                .map(compressor -> new CostedMachine(
                        compressor,
                        powers.of(compressor.id()),
                        waiting.of(new Machine(compressor, histories.of(compressor.id())))))
                .toList();
    }

    /** What those together take for their air (S24); empty where of none flow and power were read in one test. */
    public static Optional<SiteSpecificPower> together(List<CostedMachine> machines) {
        List<PoweredPart> parts = machines.stream()
                .flatMap(machine -> machine.power().stream().map(power -> power.part(machine.tag())))
                .toList();
        return parts.isEmpty() ? Optional.empty() : Optional.of(SiteSpecificPower.of(parts));
    }
}
