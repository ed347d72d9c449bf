package plantair.equipment.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import plantair.equipment.Receiver;
import plantair.equipment.VesselStop;
import plantair.equipment.VesselStops;
import plantair.site.Site;
import plantair.web.Choices;
import plantair.web.Status;

/** What speaks against receivers today, in words. */
@Component
final class HazardWords {

    private final VesselStops stops;
    private final Choices choices;
    private final Clock clock;

    HazardWords(VesselStops stops, Choices choices, Clock clock) {
        this.stops = stops;
        this.choices = choices;
        this.clock = clock;
    }

    /** The date at a site. */
    LocalDate today(Site site) {
        return LocalDate.now(clock.withZone(site.facts().zoneId()));
    }

    /** The hazards of receivers of one site on a day. */
    Map<Long, List<Hazard>> of(Collection<Receiver> receivers, LocalDate day) {
        return worded(stops.of(receivers, receiver -> day));
    }

    /** The hazards of receivers read with their sites, today. */
    Map<Long, List<Hazard>> of(Collection<Receiver> receivers) {
        return worded(stops.of(receivers, receiver -> today(receiver.site())));
    }

    private Map<Long, List<Hazard>> worded(Map<Long, List<VesselStop>> found) {
        return found.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> entry.getValue().stream().map(this::hazard).toList()));
    }

    private Hazard hazard(VesselStop stop) {
        return new Hazard(
                new Status(Status.Kind.ALARM, choices.label("hazard", stop.hazard())), stop.reason(), stop.act());
    }

    /**
     * One hazard.
     *
     * @param status in a few words
     * @param reason with the figures
     * @param act what to do about it
     */
    record Hazard(Status status, String reason, String act) {}
}
