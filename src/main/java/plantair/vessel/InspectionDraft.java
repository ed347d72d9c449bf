package plantair.vessel;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * An inspection of a receiver before it is recorded.
 *
 * @param submission made by the form, so that a form sent twice is one inspection
 * @param receiverId the vessel
 * @param report what the inspector says
 * @param readings of the wall, may be empty
 */
public record InspectionDraft(UUID submission, long receiverId, Report report, List<WallEntry> readings) {

    public InspectionDraft {
        readings = List.copyOf(readings);
    }

    /**
     * What the inspector says.
     *
     * @param kind what kind of look
     * @param doneOn day of it
     * @param inspector name and commission
     * @param employer of the inspector, may be empty
     * @param findings in words, may be empty
     * @param reducedMawp gauge; null unless the inspector calculated one
     * @param nextDue as the inspector states it; null when nothing is stated
     * @param instrument with which the wall was measured, may be empty
     * @param accuracy its largest error either way; null when it is not known
     */
    public record Report(
            InspectionKind kind,
            LocalDate doneOn,
            String inspector,
            String employer,
            String findings,
            @Nullable Entered reducedMawp,
            @Nullable LocalDate nextDue,
            String instrument,
            @Nullable Entered accuracy) {}
}
