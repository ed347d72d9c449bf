package plantair.runlog;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.attachment.ReceivedFile;
import plantair.register.FactLines;
import plantair.testrecord.InstrumentCopy;

/** A run as a data logger saw it: its file, unaltered, and how that is read. Written once; withdrawn, it stays. */
@Entity
@Immutable
@NullUnmarked
public class LoggedRun {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long testId;
    private String fileName;
    private String sha256;
    private long byteCount;

    @Embedded
    private LogChoices choices;

    @Embedded
    @EmbeddedColumnNaming("logger_%s")
    private @Nullable InstrumentCopy logger;

    private String note;
    private Instant recordedAt;
    private String recordedBy;

    protected LoggedRun() {}

    LoggedRun(LoggedRunDraft draft, ReceivedFile file, Instant recordedAt, String recordedBy) {
        submission = draft.submission();
        testId = draft.testId();
        fileName = draft.fileName();
        sha256 = file.sha256();
        byteCount = file.size();
        choices = draft.choices();
        logger = draft.logger();
        note = draft.note();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    public long id() {
        return id;
    }

    /** The test whose volume, station and air it has. */
    public long testId() {
        return testId;
    }

    /** Name of the file as it was sent. */
    public String fileName() {
        return fileName;
    }

    /** Digest of its bytes. */
    public String sha256() {
        return sha256;
    }

    public long byteCount() {
        return byteCount;
    }

    /** How the file is read. */
    public LogChoices choices() {
        return choices;
    }

    /** What the pressure was read with; null when it was not said. */
    public @Nullable InstrumentCopy logger() {
        return logger;
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

    FactLines lines() {
        return new FactLines()
                .add("test", testId)
                .add("file", fileName)
                .add("bytes", byteCount)
                .add("SHA-256", sha256)
                .add("time", "column " + choices.timeColumn() + ", " + choices.timeFormat())
                .add(
                        "pressure",
                        "column " + choices.pressureColumn() + ", " + choices.pressureUnit() + " "
                                + choices.reference())
                .add("logger", logger == null ? null : logger.tag())
                .add("note", note.replaceAll("\n+", "\n"));
    }
}
