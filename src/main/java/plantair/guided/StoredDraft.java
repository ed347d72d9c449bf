package plantair.guided;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;

/** A form that is still being filled in, or a version of it that stands beside. No record. */
@Entity
@Table(name = "test_draft")
@NullUnmarked
public class StoredDraft {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID draftKey;
    private int place;
    private long compressorId;
    private String username;
    private int version;

    @Enumerated(EnumType.STRING)
    private State state;

    private String content;
    private String device;
    private String writer;
    private Instant savedAt;
    private @Nullable Long testId;

    protected StoredDraft() {}

    StoredDraft(DraftCopy copy, int place, State state, Instant savedAt) {
        draftKey = copy.key();
        compressorId = copy.compressorId();
        username = copy.username();
        this.place = place;
        this.state = state;
        version = 1;
        content = copy.content();
        device = copy.device();
        writer = copy.writer();
        this.savedAt = savedAt;
    }

    /** What becomes of a version. */
    public enum State {
        /** The form as it stands. */
        OPEN,
        /** Made from an older version; a person has to choose. */
        BESIDE,
        /** A person chose another version. */
        SET_ASIDE,
        /** Its test is recorded. */
        SENT
    }

    void save(DraftCopy copy, Instant at) {
        content = copy.content();
        device = copy.device();
        writer = copy.writer();
        savedAt = at;
        version++;
    }

    void setAside() {
        state = State.SET_ASIDE;
    }

    void sent(long test) {
        state = State.SENT;
        testId = test;
    }

    public long id() {
        return id;
    }

    public UUID draftKey() {
        return draftKey;
    }

    public int place() {
        return place;
    }

    public long compressorId() {
        return compressorId;
    }

    public String username() {
        return username;
    }

    public int version() {
        return version;
    }

    public State state() {
        return state;
    }

    /** The fields as sent. */
    public String content() {
        return content;
    }

    /** The browser that sent it, as it calls itself in short. */
    public String device() {
        return device;
    }

    /** A key of that browser. */
    String writer() {
        return writer;
    }

    public Instant savedAt() {
        return savedAt;
    }

    /** The test that was made of it; null while there is none. */
    public @Nullable Long testId() {
        return testId;
    }
}
