package plantair.due;

import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Something that is to be done by a day.
 *
 * @param kind what
 * @param objectId of the compressor, instrument, valve or receiver
 * @param pageId of the thing whose page tells of it: a valve stands on the page of its receiver
 * @param name how people call it
 * @param siteId its site; null for an instrument that is carried between sites
 * @param site name of the site; null for such an instrument
 * @param last when it was done last; null when no record tells
 * @param due its day; null where none can be told
 * @param state how near that is, by the day at the site
 * @param months interval that gave the day; null where the day was stated
 * @param isUsual whether that interval is the trade's habit and nothing that the site set
 */
public record DueEntry(
        DueKind kind,
        long objectId,
        long pageId,
        String name,
        @Nullable Long siteId,
        @Nullable String site,
        @Nullable LocalDate last,
        @Nullable LocalDate due,
        DueState state,
        @Nullable Integer months,
        boolean isUsual) {

    /** Overdue first, then the nearest. */
    static final Comparator<DueEntry> ORDER = Comparator.comparing(DueEntry::state)
            .thenComparing(DueEntry::due, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(DueEntry::name)
            .thenComparing(DueEntry::kind)
            .thenComparing(DueEntry::objectId);

    /** Whether somebody should have done it already; a machine that was never tested waits for its first test. */
    public boolean isOverdue() {
        return state == DueState.OVERDUE || state == DueState.NEVER && kind != DueKind.TEST;
    }

    /** Address of the page that tells of it. */
    public String page() {
        return switch (kind) {
            case TEST -> "/compressors/" + pageId;
            case CALIBRATION -> "/instruments/" + pageId;
            default -> "/receivers/" + pageId;
        };
    }
}
