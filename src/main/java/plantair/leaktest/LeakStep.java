package plantair.leaktest;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;

/** What became of a found leak on a day; only ever added. */
@Entity
@Table(name = "found_leak_step")
@Immutable
@NullUnmarked
public class LeakStep {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long leakId;
    private int position;

    @Enumerated(EnumType.STRING)
    private StepKind kind;

    private LocalDate doneOn;
    private String doneBy;
    private String note;
    private Instant recordedAt;
    private String recordedBy;

    protected LeakStep() {}

    LeakStep(Draft draft, Instant recordedAt, String recordedBy) {
        submission = draft.submission();
        leakId = draft.leakId();
        position = draft.position();
        kind = draft.kind();
        doneOn = draft.doneOn();
        doneBy = draft.doneBy();
        note = draft.note();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    /**
     * A step before it is recorded.
     *
     * @param submission made by the form, so that a form sent twice is one step
     * @param leakId the leak
     * @param position number of steps that the leak had when the form was opened
     * @param kind what became of it
     * @param doneOn day of it
     * @param doneBy who
     * @param note free text, may be empty
     */
    public record Draft(
            UUID submission, long leakId, int position, StepKind kind, LocalDate doneOn, String doneBy, String note) {}

    public long leakId() {
        return leakId;
    }

    public StepKind kind() {
        return kind;
    }

    public LocalDate doneOn() {
        return doneOn;
    }

    public String doneBy() {
        return doneBy;
    }

    public String note() {
        return note;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    public String recordedBy() {
        return recordedBy;
    }

    /** One fact a line for the change log. */
    String lines() {
        return kind + " on " + doneOn + " by " + doneBy + (note.isEmpty() ? "" : ": " + note.replaceAll("\n+", " "));
    }
}
