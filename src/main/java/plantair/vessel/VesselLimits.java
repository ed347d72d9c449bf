package plantair.vessel;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Receiver;
import plantair.equipment.ReceiverFacts;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.vessel.VesselLimit.By;

/** Tells how high receivers may be taken at most, by what is recorded of them. */
@Service
@Transactional(readOnly = true)
public class VesselLimits {

    private final VesselFiles files;

    VesselLimits(VesselFiles files) {
        this.files = files;
    }

    /** The lowest limit of each receiver by its id; a receiver of which none is known is left out. */
    public Map<Long, VesselLimit> of(Collection<Receiver> receivers) {
        Map<Long, VesselFile> fileOf =
                files.of(receivers.stream().map(Receiver::id).toList());
        Map<Long, VesselLimit> limits = new TreeMap<>();
        for (Receiver receiver : receivers) {
            lowest(receiver.facts(), Objects.requireNonNull(fileOf.get(receiver.id())))
                    .ifPresent(limit -> limits.put(receiver.id(), limit));
        }
        return limits;
    }

    /** Where valves are registered, they count and not the set pressure that the register of receivers kept before. */
    private static Optional<VesselLimit> lowest(ReceiverFacts facts, VesselFile file) {
        Stream<VesselLimit> valves = file.valves().isEmpty()
                ? limit(facts.reliefSet(), By.RELIEF_VALVE)
                : file.valves().stream()
                        .filter(valve -> valve.facts().inService())
                        .flatMap(valve -> limit(valve.facts().setPressure(), By.RELIEF_VALVE));
        Stream<VesselLimit> papers = file.certificates().stream()
                .filter(paper -> paper.facts().inForce())
                .flatMap(paper -> limit(paper.facts().permitted(), By.CERTIFICATE));
        Stream<VesselLimit> plate = Stream.concat(
                limit(facts.mawp(), By.MAWP),
                limit(file.reduced().map(InspectionDraft.Report::reducedMawp).orElse(null), By.INSPECTION));
        return Stream.of(plate, papers, valves)
                .flatMap(limits -> limits)
                .min(Comparator.comparingDouble(
                        limit -> GaugePressure.of(limit.pressure()).pascals()));
    }

    private static Stream<VesselLimit> limit(@Nullable Entered pressure, By by) {
        return Stream.ofNullable(pressure).map(known -> new VesselLimit(known, by));
    }
}
