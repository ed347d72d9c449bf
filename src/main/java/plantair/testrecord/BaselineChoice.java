package plantair.testrecord;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;

/** The decision that a test is a compressor's baseline from then on. Written once; earlier choices stay. */
@Entity
@Immutable
@NullUnmarked
public class BaselineChoice {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long compressorId;
    private long testId;
    private @Nullable Long eventId;
    private String reason;
    private Instant chosenAt;
    private String chosenBy;

    protected BaselineChoice() {}

    BaselineChoice(
            UUID submission,
            long compressorId,
            long testId,
            @Nullable Long eventId,
            String reason,
            Instant chosenAt,
            String chosenBy) {
        this.submission = submission;
        this.compressorId = compressorId;
        this.testId = testId;
        this.eventId = eventId;
        this.reason = reason;
        this.chosenAt = chosenAt;
        this.chosenBy = chosenBy;
    }

    public long id() {
        return id;
    }

    public long compressorId() {
        return compressorId;
    }

    /** The baseline test. */
    public long testId() {
        return testId;
    }

    /** The maintenance event behind it; null when it was another reason. */
    public @Nullable Long eventId() {
        return eventId;
    }

    public String reason() {
        return reason;
    }

    public Instant chosenAt() {
        return chosenAt;
    }

    public String chosenBy() {
        return chosenBy;
    }
}
