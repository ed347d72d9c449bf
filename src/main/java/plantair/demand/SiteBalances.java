package plantair.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.demand.LeftOutMachine.Reason;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.leaktest.SiteLeak;
import plantair.leaktest.SiteLeaks;
import plantair.pumpup.Station;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.site.Site;
import plantair.supply.CapacityPart;
import plantair.supply.ChokedNozzle;
import plantair.testrecord.MeasuredOutput;
import plantair.testrecord.MeasuredOutputs;

/** Puts supply and demand of a site together from its records. */
@Service
@Transactional(readOnly = true)
public class SiteBalances {

    private static final MeasuredFlow NO_LEAKS = new MeasuredFlow(new FlowRate(0), new FlowRate(0), FlowBasis.INTAKE);

    /** Of leaks that were typed without one; our own judgement, no source. */
    private static final double TYPED_LEAKS_U = 0.10;

    private final Compressors compressors;
    private final MeasuredOutputs outputs;
    private final SiteLeaks siteLeaks;
    private final DemandItems items;
    private final SupplyChoices choices;

    SiteBalances(
            Compressors compressors,
            MeasuredOutputs outputs,
            SiteLeaks siteLeaks,
            DemandItems items,
            SupplyChoices choices) {
        this.compressors = compressors;
        this.outputs = outputs;
        this.siteLeaks = siteLeaks;
        this.items = items;
        this.choices = choices;
    }

    /** As it is. */
    public SiteBalance of(Site site) {
        return of(site, WhatIf.NOTHING);
    }

    /** As it would be. */
    public SiteBalance of(Site site, WhatIf whatIf) {
        return of(site, whatIf, known(List.of(site)));
    }

    /** Of some sites, in their order, from as many queries as of one. */
    public List<SiteBalance> of(List<Site> sites) {
        Known known = known(sites);
        return sites.stream().map(site -> of(site, WhatIf.NOTHING, known)).toList();
    }

    /** What the registers and records say of some sites, by the ids of the sites; the outputs by those of the machines. */
    private record Known(
            Map<Long, SupplyChoice> choices,
            Map<Long, List<Compressor>> machines,
            Map<Long, MeasuredOutput> outputs,
            Map<Long, SiteLeak> leaks,
            Map<Long, List<SiteDemand>> items) {}

    private Known known(List<Site> sites) {
        List<Long> ids = sites.stream().map(Site::id).toList();
        List<Compressor> machines = compressors.findAllBySiteIdInAndPlateInServiceTrueOrderByPlateTag(ids);
        return new Known(
                choices.of(sites),
                machines.stream()
                        .collect(Collectors.groupingBy(machine -> machine.site().id())),
                outputs.of(machines.stream().map(Compressor::id).toList()),
                siteLeaks.newest(ids),
                items.findBySiteIdInAndFactsInServiceTrueOrderByFactsLabel(ids).stream()
                        .collect(Collectors.groupingBy(item -> item.site().id())));
    }

    private SiteBalance of(Site site, WhatIf whatIf, Known known) {
        SupplyFacts choice =
                Objects.requireNonNull(known.choices.get(site.id())).facts();
        List<Compressor> inService = known.machines.getOrDefault(site.id(), List.of());
        Map<Long, MeasuredOutput> measured = new TreeMap<>(known.outputs);
        measured.keySet().retainAll(inService.stream().map(Compressor::id).collect(Collectors.toSet()));
        GaugePressure at = pressure(choice, measured);
        List<CountedMachine> counted = new ArrayList<>();
        List<LeftOutMachine> leftOut = new ArrayList<>();
        for (Compressor machine : inService) {
            MeasuredOutput output = measured.get(machine.id());
            Optional<CapacityPart> part =
                    output == null || at == null ? Optional.empty() : output.part(machine.tag(), at);
            Reason why = why(machine.id(), choice, whatIf, output, part);
            if (why != null) {
                leftOut.add(new LeftOutMachine(machine.id(), machine.tag(), why, output));
            } else {
                counted.add(new CountedMachine(machine.id(), machine.tag(), output, part.orElseThrow()));
            }
        }
        AbsolutePressure station = station(site);
        return new SiteBalance(
                site.id(),
                site.name(),
                station,
                at,
                choice,
                counted,
                leftOut,
                leaks(known.leaks.get(site.id()), choice, at, station),
                uses(known.items.getOrDefault(site.id(), List.of()), new ItemReading(station, choice), whatIf));
    }

    /** Events of a site in use, for those who reckon with storage: label, air of all of them, length and interval. */
    public List<ItemUse> events(Site site) {
        var reading = new ItemReading(station(site), choices.of(site).facts());
        return items
                .findBySiteIdAndFactsKindAndFactsInServiceTrueOrderByFactsLabel(site.id(), DemandKind.EVENT)
                .stream()
                .map(item -> reading.use(item.id(), item.facts()))
                .toList();
    }

    /** Barometric pressure that is usual at a site. */
    public static AbsolutePressure station(Site site) {
        var facts = site.facts();
        return new Station(
                        null,
                        facts.normalBarometer().orElse(null),
                        facts.height().orElse(null))
                .pressure();
    }

    /** What the site has chosen; else that of the newest test. */
    private static @Nullable GaugePressure pressure(SupplyFacts choice, Map<Long, MeasuredOutput> measured) {
        if (choice.workingPressure() != null) {
            return GaugePressure.of(choice.workingPressure());
        }
        return measured.values().stream()
                .reduce((one, other) -> other.on().isAfter(one.on()) ? other : one)
                .map(MeasuredOutput::at)
                .orElse(null);
    }

    private static @Nullable Reason why(
            long machine,
            SupplyFacts choice,
            WhatIf whatIf,
            @Nullable MeasuredOutput output,
            Optional<CapacityPart> part) {
        if (whatIf.machinesOut().contains(machine)) {
            return Reason.SUPPOSED;
        }
        if (choice.isStandby(machine)) {
            return Reason.STANDBY;
        }
        if (output == null) {
            return Reason.NO_TEST;
        }
        return part.isEmpty() ? Reason.FAR : null;
    }

    private static LeaksUsed leaks(
            @Nullable SiteLeak newest, SupplyFacts choice, @Nullable GaugePressure at, AbsolutePressure station) {
        if (choice.leaksFrom() == LeaksFrom.TYPED && choice.leaks() != null) {
            double u = choice.leaksUncertainty() == null
                    ? TYPED_LEAKS_U
                    : choice.leaksUncertainty().part();
            MeasuredFlow typed = MeasuredFlow.of(FlowRate.of(choice.leaks()), u, FlowBasis.INTAKE);
            return new LeaksUsed(typed, LeaksFrom.TYPED, null);
        }
        Optional<SiteLeak> tested =
                choice.leaksFrom() == LeaksFrom.TEST ? Optional.ofNullable(newest) : Optional.empty();
        return tested.map(test -> new LeaksUsed(carried(test, at, station), LeaksFrom.TEST, test))
                .orElse(new LeaksUsed(NO_LEAKS, LeaksFrom.NONE, null));
    }

    private static MeasuredFlow carried(SiteLeak test, @Nullable GaugePressure at, AbsolutePressure station) {
        return at == null ? test.flow() : ChokedNozzle.carried(test.flow(), test.at(), at, station);
    }

    private static List<ItemUse> uses(List<SiteDemand> inUse, ItemReading reading, WhatIf whatIf) {
        Stream<ItemUse> known = inUse.stream().map(item -> reading.use(item.id(), item.facts()));
        return Stream.concat(known, whatIf.more().stream().map(facts -> reading.use(null, facts)))
                .toList();
    }
}
