package plantair.vessel;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Receiver;
import plantair.equipment.VesselStop;
import plantair.equipment.VesselStops;

/** Says which hazards forbid to pump a receiver up, each with its reason in words. An empty list clears nothing. */
@Service
public class VesselChecks implements VesselStops {

    private final VesselFiles files;
    private final ReliefValves valves;
    private final StopWords words;

    VesselChecks(VesselFiles files, ReliefValves valves, StopWords words) {
        this.files = files;
        this.valves = valves;
        this.words = words;
    }

    @Override
    @Transactional(readOnly = true)
    public Map<Long, List<VesselStop>> of(Collection<Receiver> receivers, Function<Receiver, LocalDate> day) {
        List<Long> ids = receivers.stream().map(Receiver::id).distinct().toList();
        Map<Long, VesselFile> fileOf = files.of(ids);
        Map<Long, ValveInterval> intervalOf = valves.findIntervals(ids).stream()
                .collect(Collectors.toMap(ValveInterval::receiverId, Function.identity()));
        return receivers.stream()
                .collect(Collectors.toMap(
                        Receiver::id,
                        receiver -> new StopRules(
                                        receiver.facts(),
                                        fileOf.get(receiver.id()),
                                        intervalOf.get(receiver.id()),
                                        day.apply(receiver),
                                        words)
                                .all().stream().map(words::stop).toList(),
                        (same, again) -> same));
    }
}
