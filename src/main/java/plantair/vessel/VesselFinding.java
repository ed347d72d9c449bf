package plantair.vessel;

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

/** Damage seen on a receiver, or the word that some is mended. Written once. */
@Entity
@Immutable
@NullUnmarked
public class VesselFinding {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long receiverId;
    private LocalDate foundOn;

    @Enumerated(EnumType.STRING)
    private FindingKind kind;

    private String note;
    private Instant recordedAt;
    private String recordedBy;
    private @Nullable Long clearsId;

    protected VesselFinding() {}

    VesselFinding(FindingDraft draft, Instant recordedAt, String recordedBy, @Nullable Long clearsId) {
        submission = draft.submission();
        receiverId = draft.receiverId();
        foundOn = draft.foundOn();
        kind = draft.kind();
        note = draft.note();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
        this.clearsId = clearsId;
    }

    public long id() {
        return id;
    }

    public long receiverId() {
        return receiverId;
    }

    public LocalDate foundOn() {
        return foundOn;
    }

    public FindingKind kind() {
        return kind;
    }

    /** Free text, may be empty. */
    public String note() {
        return note;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    public String recordedBy() {
        return recordedBy;
    }

    /** The finding that this one says is mended; null when it is damage itself. */
    public @Nullable Long clearsId() {
        return clearsId;
    }

    /** One fact a line for the change log. */
    String lines() {
        return new FactLines()
                .add("entry", id)
                .add(clearsId == null ? "seen on" : "mended by", foundOn)
                .add("damage", kind)
                .add("note", note.replaceAll("\n+", "\n"))
                .toString();
    }
}
