package plantair.equipment.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;
import plantair.equipment.Receiver;
import plantair.equipment.VesselHazard;
import plantair.site.Site;
import plantair.web.Choices;
import plantair.web.Status;

/** What speaks against a receiver today, in words. */
@Component
final class HazardWords {

    private static final Set<VesselHazard> GRAVE =
            Set.of(VesselHazard.RELIEF_ABOVE_MAWP, VesselHazard.CERTIFICATE_EXPIRED);

    private final Choices choices;
    private final Clock clock;

    HazardWords(Choices choices, Clock clock) {
        this.choices = choices;
        this.clock = clock;
    }

    /** The date at a site. */
    LocalDate today(Site site) {
        return LocalDate.now(clock.withZone(site.facts().zoneId()));
    }

    /** The hazards of a receiver of this site, the grave ones first. */
    List<Hazard> of(Receiver receiver, Site site) {
        return receiver.facts().hazards(today(site)).stream().map(this::hazard).toList();
    }

    private Hazard hazard(VesselHazard hazard) {
        boolean grave = GRAVE.contains(hazard);
        var kind = grave ? Status.Kind.ALARM : Status.Kind.WATCH;
        return new Hazard(
                new Status(kind, choices.label("hazard", hazard)), choices.label("hazard.act", hazard), grave);
    }

    /**
     * One hazard.
     *
     * @param status in a few words
     * @param act what to do about it
     * @param grave whether the receiver must not be pumped up
     */
    record Hazard(Status status, String act, boolean grave) {}
}
