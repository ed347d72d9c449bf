package plantair.register;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;

/** One change: who, when, what before and after, and why. A link of the chain, see {@link Changes}. */
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
    private @Nullable Long chainNumber;
    private @Nullable String contentDigest;
    private @Nullable String previousDigest;
    private @Nullable String digest;

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
        // what the database keeps, so that the line reads the same when it comes back
        this.changedAt = changedAt.truncatedTo(ChronoUnit.MICROS);
        this.changedBy = changedBy;
        this.kind = kind;
        this.objectId = objectId;
        this.objectName = objectName;
        this.beforeText = beforeText;
        this.afterText = afterText;
        this.reason = reason;
    }

    /**
     * Puts it at the end of the chain.
     *
     * @param end where the chain ended before
     * @param content digest of the whole record as it is now
     * @return where it ends now
     */
    ChainEnd link(ChainEnd end, String content) {
        chainNumber = end.number() + 1;
        contentDigest = content;
        previousDigest = end.digest();
        digest = Sha256.of(end.digest() + " " + line());
        return new ChainEnd(chainNumber, digest, end.begun());
    }

    /** The line of the chain without its digest: fields with a tab between them. */
    public String line() {
        return Stream.of(
                        chainNumber,
                        changedAt,
                        changedBy,
                        kind,
                        objectId,
                        objectName,
                        beforeText,
                        afterText,
                        reason,
                        contentDigest)
                .map(field -> LineText.of(field == null ? null : field.toString()))
                .collect(Collectors.joining("\t"));
    }

    public long id() {
        return id;
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

    /** Place in the chain, from 1; null when it was written before the chain was begun. */
    public @Nullable Long chainNumber() {
        return chainNumber;
    }

    /** Digest of the whole record as it was after the change. */
    public @Nullable String contentDigest() {
        return contentDigest;
    }

    public @Nullable String previousDigest() {
        return previousDigest;
    }

    /** Digest of the digest before, a space and {@link #line}. */
    public @Nullable String digest() {
        return digest;
    }
}
