package plantair.vessel.web;

import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Receiver;
import plantair.quantity.Entered;

/**
 * The receiver that a form is about.
 *
 * @param id its id
 * @param tag how the plant calls it
 * @param site name of its site
 * @param today the day at its site
 * @param mawp from its plate; null when it is not known
 */
record Vessel(
        long id,
        String tag,
        String site,
        LocalDate today,
        @Nullable Entered mawp) {

    static Vessel of(Receiver receiver, Clock clock) {
        var site = receiver.site();
        LocalDate today = LocalDate.now(clock.withZone(site.facts().zoneId()));
        return new Vessel(
                receiver.id(),
                receiver.facts().tag(),
                site.name(),
                today,
                receiver.facts().mawp());
    }

    /** Address of its page. */
    public String page() {
        return "/receivers/" + id;
    }
}
