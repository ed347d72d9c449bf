package plantair.vessel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plantair.equipment.ReceiverFacts;
import plantair.quantity.Entered;
import plantair.quantity.Length;
import plantair.wall.WallPlace;
import plantair.wall.WallReading;

/**
 * The safety records of a receiver that count: those that were corrected, withdrawn or cleared are left out.
 *
 * @param valves in service first
 * @param tests of all its valves, newest first
 * @param certificates newest first
 * @param inspections newest first
 * @param findings damage that stands, newest first
 */
public record VesselFile(
        List<ReliefValve> valves,
        List<ValveTest> tests,
        List<VesselCertificate> certificates,
        List<Inspection> inspections,
        List<VesselFinding> findings) {

    /** The newest test of a valve. */
    public Optional<ValveTest> lastTest(ReliefValve valve) {
        return tests.stream()
                .filter(test -> test.draft().valveId() == valve.id())
                .findFirst();
    }

    /** The newest inspection that reduced the pressure. */
    public Optional<InspectionDraft.Report> reduced() {
        return inspections.stream()
                .map(inspection -> inspection.draft().report())
                .filter(report -> report.reducedMawp() != null)
                .findFirst();
    }

    /** The places at which the wall was measured, by their names, in the order of the newest inspection. */
    public Map<String, WallPlace> wall(ReceiverFacts facts) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, List<WallReading>> readings = new LinkedHashMap<>();
        Map<String, WallPart> parts = new LinkedHashMap<>();
        for (Inspection inspection : inspections) {
            var draft = inspection.draft();
            Entered accuracy = draft.report().accuracy();
            for (WallEntry entry : draft.readings()) {
                String key = entry.place().toLowerCase(Locale.ROOT);
                names.putIfAbsent(key, entry.place());
                parts.putIfAbsent(key, entry.part());
                List<WallReading> known = readings.computeIfAbsent(key, place -> new ArrayList<>());
                // of two inspections of one day the one recorded later comes first, and counts
                if (known.stream()
                        .noneMatch(one -> one.day().equals(draft.report().doneOn()))) {
                    known.add(new WallReading(
                            draft.report().doneOn(),
                            Length.of(entry.thickness()),
                            accuracy == null ? null : Length.of(accuracy)));
                }
            }
        }
        Map<String, WallPlace> places = new LinkedHashMap<>();
        readings.forEach((key, known) -> {
            Entered required = parts.get(key) == WallPart.HEAD ? facts.headRequired() : facts.shellRequired();
            places.put(names.get(key), new WallPlace(known, required == null ? null : Length.of(required)));
        });
        return places;
    }
}
