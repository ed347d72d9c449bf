package plantair.storage.web;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import plantair.demand.SiteBalances;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.leaktest.SiteLeaks;
import plantair.pumpup.Station;
import plantair.site.Site;
import plantair.testrecord.MeasuredOutput;
import plantair.testrecord.MeasuredOutputs;
import plantair.vessel.VesselLimits;

/** Reads what a site has for storage. */
@Component
final class StorageSites {

    private final Receivers receivers;
    private final VesselLimits limits;
    private final Compressors compressors;
    private final MeasuredOutputs outputs;
    private final SiteLeaks leaks;
    private final SiteBalances balances;

    StorageSites(
            Receivers receivers,
            VesselLimits limits,
            Compressors compressors,
            MeasuredOutputs outputs,
            SiteLeaks leaks,
            SiteBalances balances) {
        this.receivers = receivers;
        this.limits = limits;
        this.compressors = compressors;
        this.outputs = outputs;
        this.leaks = leaks;
        this.balances = balances;
    }

    StorageSite of(Site site) {
        List<Receiver> vessels = receivers.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(site.id());
        List<Compressor> machines = compressors.findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(site.id()).stream()
                .filter(Compressor::isInService)
                .toList();
        Map<Long, MeasuredOutput> measured =
                outputs.of(machines.stream().map(Compressor::id).toList());
        var facts = site.facts();
        var station = new Station(
                null, facts.normalBarometer().orElse(null), facts.height().orElse(null));
        return new StorageSite(
                site.id(),
                station.pressure(),
                vessels,
                limits.of(vessels),
                machines,
                measured,
                leaks.newest(site.id()),
                balances.events(site).stream()
                        .flatMap(use -> StorageEvent.of(use).stream())
                        .toList());
    }
}
