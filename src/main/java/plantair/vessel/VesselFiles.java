package plantair.vessel;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the safety records of receivers: five questions to the database, however many receivers. */
@Service
public class VesselFiles {

    private final ReliefValves valves;
    private final ValveTests tests;
    private final VesselCertificates certificates;
    private final Inspections inspections;
    private final VesselFindings findings;

    VesselFiles(
            ReliefValves valves,
            ValveTests tests,
            VesselCertificates certificates,
            Inspections inspections,
            VesselFindings findings) {
        this.valves = valves;
        this.tests = tests;
        this.certificates = certificates;
        this.inspections = inspections;
        this.findings = findings;
    }

    /** The file of each receiver by its id. */
    @Transactional(readOnly = true)
    public Map<Long, VesselFile> of(Collection<Long> receiverIds) {
        Map<Long, List<ReliefValve>> valvesOf = valves.findOf(receiverIds).stream()
                .collect(Collectors.groupingBy(valve -> valve.receiver().id()));
        List<Long> valveIds = valvesOf.values().stream()
                .flatMap(List::stream)
                .map(ReliefValve::id)
                .toList();
        Map<Long, List<ValveTest>> testsOf =
                current(tests.findHistory(valveIds), ValveTest::id, ValveTest::entry).stream()
                        .collect(Collectors.groupingBy(test -> test.draft().valveId()));
        Map<Long, List<VesselCertificate>> papersOf = certificates.findOf(receiverIds).stream()
                .collect(Collectors.groupingBy(paper -> paper.receiver().id()));
        Map<Long, List<Inspection>> looksOf =
                current(inspections.findHistory(receiverIds), Inspection::id, Inspection::entry).stream()
                        .collect(Collectors.groupingBy(look -> look.draft().receiverId()));
        Map<Long, List<VesselFinding>> damageOf = standing(findings.findHistory(receiverIds)).stream()
                .collect(Collectors.groupingBy(VesselFinding::receiverId));
        return receiverIds.stream().distinct().collect(Collectors.toMap(Function.identity(), id -> {
            List<ReliefValve> own = valvesOf.getOrDefault(id, List.of());
            return new VesselFile(
                    own,
                    own.stream()
                            .flatMap(valve -> testsOf.getOrDefault(valve.id(), List.of()).stream())
                            .toList(),
                    papersOf.getOrDefault(id, List.of()),
                    looksOf.getOrDefault(id, List.of()),
                    damageOf.getOrDefault(id, List.of()));
        }));
    }

    /** Those that nothing takes the place of, and that do not withdraw another. */
    private static <T> List<T> current(List<T> all, Function<T, Long> id, Function<T, Entry> entry) {
        Set<Long> superseded = all.stream()
                .map(one -> entry.apply(one).supersedesId())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return all.stream()
                .filter(one ->
                        !superseded.contains(id.apply(one)) && !entry.apply(one).withdrawn())
                .toList();
    }

    private static List<VesselFinding> standing(List<VesselFinding> all) {
        Set<Long> cleared = all.stream()
                .map(VesselFinding::clearsId)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return all.stream()
                .filter(finding -> finding.clearsId() == null && !cleared.contains(finding.id()))
                .toList();
    }
}
