package plantair.vessel.web;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * What the page of a receiver shows of its safety records, all text ready.
 *
 * @param valves in service first
 * @param papers certificates and permits, newest first
 * @param looks inspections, newest first, also those that were corrected
 * @param damage what was seen, newest first
 * @param wall places at which it was measured
 * @param least what the wall leaves at the worst of them; null where no loss can be told
 */
record VesselPage(
        List<Valve> valves,
        List<Paper> papers,
        List<Look> looks,
        List<Damage> damage,
        List<Place> wall,
        @Nullable Life least) {

    /**
     * Who recorded an entry, and whether it counts.
     *
     * @param id of the entry
     * @param day it was recorded, at the site
     * @param by who
     * @param counts false when it was corrected or says that another did not happen
     * @param withdrawn whether it says so
     * @param supersedes the entry it corrects; null when it is the first
     * @param reason why; null when it is the first
     */
    record Recorded(
            long id,
            LocalDate day,
            String by,
            boolean counts,
            boolean withdrawn,
            @Nullable Long supersedes,
            @Nullable String reason) {}

    /** A relief valve with its tests. */
    record Valve(
            long id,
            String tag,
            @Nullable String set,
            @Nullable String capacity,
            String stamp,
            @Nullable LocalDate installed,
            String note,
            boolean inService,
            List<Test> tests) {}

    /** A test of a relief valve. */
    record Test(
            LocalDate doneOn,
            String method,
            @Nullable String poppedAt,
            Status result,
            String doneBy,
            String note,
            Recorded recorded) {}

    /** A certificate or permit. */
    record Paper(
            long id,
            String number,
            String issuedBy,
            LocalDate issuedOn,
            @Nullable String permitted,
            @Nullable LocalDate validTo,
            String note,
            Status state) {}

    /** An inspection. */
    record Look(
            String kind,
            LocalDate doneOn,
            String inspector,
            String employer,
            String findings,
            @Nullable String reduced,
            @Nullable LocalDate nextDue,
            String instrument,
            @Nullable String accuracy,
            int readings,
            Recorded recorded) {}

    /** Damage; its end is null while it stands. */
    record Damage(
            long id,
            LocalDate foundOn,
            String kind,
            String note,
            String by,
            @Nullable Cleared cleared) {}

    /** Who said that damage is mended, and how. */
    record Cleared(LocalDate on, String note, String by) {}

    /** A place of the wall. */
    record Place(
            String name,
            String thickness,
            LocalDate day,
            @Nullable String required,
            Status state,
            @Nullable String rate,
            @Nullable Life life) {}

    /** What is left, in years. */
    record Life(String years, String half, String longest) {}
}
