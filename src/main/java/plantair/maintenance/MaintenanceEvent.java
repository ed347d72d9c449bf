package plantair.maintenance;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.register.FactLines;

/**
 * Something done to a compressor. Written once; a correction, and a withdrawal, is another one that names this one.
 */
@Entity
@Immutable
@NullUnmarked
public class MaintenanceEvent {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long compressorId;
    private LocalDate happenedOn;

    @Enumerated(EnumType.STRING)
    private EventKind kind;

    private boolean mayStep;
    private String doneBy;
    private String note;
    private boolean withdrawn;
    private Instant recordedAt;
    private String recordedBy;
    private @Nullable Long supersedesId;
    private @Nullable String reason;

    protected MaintenanceEvent() {}

    MaintenanceEvent(EventDraft draft, Instant recordedAt, String recordedBy, @Nullable Correction correction) {
        submission = draft.submission();
        compressorId = draft.compressorId();
        happenedOn = draft.happenedOn();
        kind = draft.kind();
        mayStep = draft.mayStep();
        doneBy = draft.doneBy();
        note = draft.note();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
        withdrawn = correction != null && correction.withdraws();
        supersedesId = correction == null ? null : correction.supersedesId();
        reason = correction == null ? null : correction.reason();
    }

    /**
     * Why an event takes the place of another.
     *
     * @param supersedesId the one it corrects
     * @param reason why
     * @param withdraws whether it says that the other did not happen
     */
    record Correction(long supersedesId, String reason, boolean withdraws) {}

    public long id() {
        return id;
    }

    public long compressorId() {
        return compressorId;
    }

    /** Day of the work, at the site. */
    public LocalDate happenedOn() {
        return happenedOn;
    }

    public EventKind kind() {
        return kind;
    }

    /** Whether it may have changed the output, so that the trend allows for a step here. */
    public boolean mayStep() {
        return mayStep;
    }

    /** Who did it, may be empty. */
    public String doneBy() {
        return doneBy;
    }

    /** Free text, may be empty. */
    public String note() {
        return note;
    }

    /** Whether it says that the event it supersedes did not happen. */
    public boolean isWithdrawn() {
        return withdrawn;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    public String recordedBy() {
        return recordedBy;
    }

    /** The event that this one corrects or withdraws; null when it is the first. */
    public @Nullable Long supersedesId() {
        return supersedesId;
    }

    /** Why it takes that one's place; null when it is the first. */
    public @Nullable String reason() {
        return reason;
    }

    /** The same once more, under another submission. */
    public EventDraft draft(UUID otherSubmission) {
        return new EventDraft(otherSubmission, compressorId, happenedOn, kind, mayStep, doneBy, note);
    }

    /** One fact a line for the change log; blank lines of the note are left out. */
    String lines() {
        return new FactLines()
                .add("entry", id)
                .add("date", happenedOn)
                .add("work", kind)
                .add("may have changed the output", mayStep)
                .add("done by", doneBy)
                .add("note", note.replaceAll("\n+", "\n"))
                .add("withdrawn", withdrawn ? true : null)
                .toString();
    }
}
