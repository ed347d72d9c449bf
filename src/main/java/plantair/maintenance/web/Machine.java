package plantair.maintenance.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import plantair.equipment.Compressor;

/**
 * The compressor whose events a page is about.
 *
 * @param id its id
 * @param tag how the plant calls it
 * @param site name of its site
 * @param zone time zone of its site
 * @param isInService false once it is retired
 */
record Machine(long id, String tag, String site, ZoneId zone, boolean isInService) {

    static Machine of(Compressor compressor) {
        var site = compressor.site();
        return new Machine(
                compressor.id(), compressor.tag(), site.name(), site.facts().zoneId(), compressor.isInService());
    }

    /** The day at its site. */
    LocalDate today(Clock clock) {
        return LocalDate.now(clock.withZone(zone));
    }

    /** Address of the list of its events. */
    public String events() {
        return "/compressors/" + id + "/events";
    }
}
