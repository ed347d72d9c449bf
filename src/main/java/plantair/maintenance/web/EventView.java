package plantair.maintenance.web;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import plantair.maintenance.MaintenanceEvent;

/**
 * An event as pages show it.
 *
 * @param id its id
 * @param happenedOn day of the work
 * @param kind code of what was done
 * @param mayStep whether it may have changed the output
 * @param doneBy who did it, may be empty
 * @param note free text, may be empty
 * @param isWithdrawn whether it says that another did not happen
 * @param recordedOn day it was recorded, at the site
 * @param by who recorded it
 * @param supersedes id of the one it corrects or withdraws; null when it is the first
 * @param reason why; null when it is the first
 * @param supersededBy id of the one that takes its place; null when none does
 */
record EventView(
        long id,
        LocalDate happenedOn,
        String kind,
        boolean mayStep,
        String doneBy,
        String note,
        boolean isWithdrawn,
        LocalDate recordedOn,
        String by,
        @Nullable Long supersedes,
        @Nullable String reason,
        @Nullable Long supersededBy) {

    /**
     * The view of an event.
     *
     * @param later the one that takes its place; null when none does
     * @param zone time zone of the site
     */
    static EventView of(MaintenanceEvent event, @Nullable MaintenanceEvent later, ZoneId zone) {
        return new EventView(
                event.id(),
                event.happenedOn(),
                event.kind().name(),
                event.mayStep(),
                event.doneBy(),
                event.note(),
                event.isWithdrawn(),
                event.recordedAt().atZone(zone).toLocalDate(),
                event.recordedBy(),
                event.supersedesId(),
                event.reason(),
                later == null ? null : later.id());
    }

    /** Whether it counts: nothing takes its place, and it is no withdrawal. */
    public boolean counts() {
        return supersededBy == null && !isWithdrawn;
    }
}
