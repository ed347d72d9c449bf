package plantair.register;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;

/** One change: who, when, what before and after, and why. */
@Entity
@Immutable
@NullUnmarked
public class ChangeRecord {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private Instant changedAt;
    private String changedBy;

    @Enumerated(EnumType.STRING)
    private ChangeKind kind;

    private long objectId;
    private String objectName;
    private @Nullable String beforeText;
    private String afterText;
    private String reason;

    protected ChangeRecord() {}

    /**
     * A change to be written down.
     *
     * @param changedAt when
     * @param changedBy who
     * @param kind what was changed
     * @param objectId its id
     * @param objectName how people call it
     * @param beforeText what it said before, one fact a line; null when it was new
     * @param afterText what it says now
     * @param reason why
     */
    public ChangeRecord(
            Instant changedAt,
            String changedBy,
            ChangeKind kind,
            long objectId,
            String objectName,
            @Nullable String beforeText,
            String afterText,
            String reason) {
        this.changedAt = changedAt;
        this.changedBy = changedBy;
        this.kind = kind;
        this.objectId = objectId;
        this.objectName = objectName;
        this.beforeText = beforeText;
        this.afterText = afterText;
        this.reason = reason;
    }

    public Instant changedAt() {
        return changedAt;
    }

    public String changedBy() {
        return changedBy;
    }

    public ChangeKind kind() {
        return kind;
    }

    public long objectId() {
        return objectId;
    }

    public String objectName() {
        return objectName;
    }

    public @Nullable String beforeText() {
        return beforeText;
    }

    public String afterText() {
        return afterText;
    }

    public String reason() {
        return reason;
    }
}
