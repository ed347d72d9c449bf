package plantair.vessel.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Receiver;
import plantair.equipment.ReceiverPagePart;
import plantair.vessel.Entry;
import plantair.vessel.Inspection;
import plantair.vessel.Inspections;
import plantair.vessel.ReliefValve;
import plantair.vessel.ReliefValves;
import plantair.vessel.ValveTest;
import plantair.vessel.ValveTests;
import plantair.vessel.VesselCertificates;
import plantair.vessel.VesselFiles;
import plantair.vessel.VesselFinding;
import plantair.vessel.VesselFindings;
import plantair.wall.WallPlace;
import plantair.web.UnitSet;

/** The safety records on the page of a receiver. */
@Component
class VesselPart implements ReceiverPagePart {

    private final ReliefValves valves;
    private final ValveTests tests;
    private final VesselCertificates certificates;
    private final Inspections inspections;
    private final VesselFindings findings;
    private final VesselFiles files;
    private final VesselWords words;
    private final WallWords wallWords;
    private final Clock clock;

    VesselPart(
            ReliefValves valves,
            ValveTests tests,
            VesselCertificates certificates,
            Inspections inspections,
            VesselFindings findings,
            VesselFiles files,
            VesselWords words,
            WallWords wallWords,
            Clock clock) {
        this.valves = valves;
        this.tests = tests;
        this.certificates = certificates;
        this.inspections = inspections;
        this.findings = findings;
        this.files = files;
        this.words = words;
        this.wallWords = wallWords;
        this.clock = clock;
    }

    @Override
    public String attribute() {
        return "vessel";
    }

    @Override
    @Transactional(readOnly = true)
    public Object of(Receiver receiver, UnitSet units) {
        List<Long> id = List.of(receiver.id());
        ZoneId zone = receiver.site().facts().zoneId();
        Map<String, WallPlace> wall =
                Objects.requireNonNull(files.of(id).get(receiver.id())).wall(receiver.facts());
        return new VesselPage(
                valves(id, zone, units),
                certificates.findOf(id).stream()
                        .map(paper -> words.paper(paper, LocalDate.now(clock.withZone(zone)), units))
                        .toList(),
                looks(id, zone, units),
                damage(id),
                wall.entrySet().stream()
                        .map(place -> wallWords.place(place, units))
                        .toList(),
                WallPlace.least(List.copyOf(wall.values())).map(WallWords::life).orElse(null));
    }

    private List<VesselPage.Valve> valves(List<Long> receiver, ZoneId zone, UnitSet units) {
        List<ReliefValve> all = valves.findOf(receiver);
        List<ValveTest> history =
                tests.findHistory(all.stream().map(ReliefValve::id).toList());
        Set<Long> superseded = superseded(history, ValveTest::entry);
        Map<Long, List<VesselPage.Test>> testsOf = history.stream()
                .collect(Collectors.groupingBy(
                        test -> test.draft().valveId(),
                        Collectors.mapping(
                                test -> words.test(
                                        test.draft(), recorded(test.id(), test.entry(), superseded, zone), units),
                                Collectors.toList())));
        return all.stream()
                .map(valve -> words.valve(valve, testsOf.getOrDefault(valve.id(), List.of()), units))
                .toList();
    }

    private List<VesselPage.Look> looks(List<Long> receiver, ZoneId zone, UnitSet units) {
        List<Inspection> history = inspections.findHistory(receiver);
        Set<Long> superseded = superseded(history, Inspection::entry);
        return history.stream()
                .map(one -> words.look(one.draft(), recorded(one.id(), one.entry(), superseded, zone), units))
                .toList();
    }

    private List<VesselPage.Damage> damage(List<Long> receiver) {
        List<VesselFinding> history = findings.findHistory(receiver);
        Map<Long, VesselFinding> clearedBy = history.stream()
                .filter(finding -> finding.clearsId() != null)
                .collect(Collectors.toMap(VesselFinding::clearsId, Function.identity()));
        return history.stream()
                .filter(finding -> finding.clearsId() == null)
                .map(finding -> words.damage(finding, clearedBy.get(finding.id())))
                .toList();
    }

    private static <T> Set<Long> superseded(List<T> history, Function<T, Entry> entry) {
        return history.stream()
                .map(one -> entry.apply(one).supersedesId())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
    }

    private static VesselPage.Recorded recorded(long id, Entry entry, Set<Long> superseded, ZoneId zone) {
        return new VesselPage.Recorded(
                id,
                entry.recordedAt().atZone(zone).toLocalDate(),
                entry.recordedBy(),
                !superseded.contains(id) && !entry.withdrawn(),
                entry.withdrawn(),
                entry.supersedesId(),
                entry.reason());
    }
}
