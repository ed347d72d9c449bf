package plantair.attachment;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.FactLines;

/** A photo or paper of a record. Written once; one that does not belong there is withdrawn and stays. */
@Entity
@Immutable
@NullUnmarked
public class Attachment {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;

    @Enumerated(EnumType.STRING)
    private AttachedTo kind;

    private long objectId;
    private String sha256;

    @Enumerated(EnumType.STRING)
    private FileFormat format;

    private long byteCount;
    private String name;
    private String description;
    private Instant attachedAt;
    private String attachedBy;

    protected Attachment() {}

    Attachment(AttachmentDraft draft, ReceivedFile file, FileFormat format, Instant attachedAt, String attachedBy) {
        submission = draft.submission();
        kind = draft.to();
        objectId = draft.objectId();
        name = draft.name();
        description = draft.description();
        sha256 = file.sha256();
        byteCount = file.size();
        this.format = format;
        this.attachedAt = attachedAt;
        this.attachedBy = attachedBy;
    }

    public long id() {
        return id;
    }

    /** What kind of record it belongs to. */
    public AttachedTo to() {
        return kind;
    }

    /** Number of that record. */
    public long objectId() {
        return objectId;
    }

    /** Digest of its bytes. */
    public String sha256() {
        return sha256;
    }

    public FileFormat format() {
        return format;
    }

    /** How many bytes it has. */
    public long byteCount() {
        return byteCount;
    }

    /** Name of the file as it was sent. */
    public String name() {
        return name;
    }

    /** What is on it, in the words of the person. */
    public String description() {
        return description;
    }

    public Instant attachedAt() {
        return attachedAt;
    }

    public String attachedBy() {
        return attachedBy;
    }

    /** The name with an ending that fits what it is. */
    public String fileName() {
        String ending = "." + format.ending();
        boolean fits = name.regionMatches(true, name.length() - ending.length(), ending, 0, ending.length())
                || format == FileFormat.JPEG && name.toLowerCase(Locale.ROOT).endsWith(".jpeg");
        return fits ? name : name + ending;
    }

    FactLines lines() {
        return new FactLines()
                .add("attached to", kind.kind().name().toLowerCase(Locale.ROOT) + " " + objectId)
                .add("file", name)
                .add("shows", description)
                .add("format", format.name())
                .add("bytes", byteCount)
                .add("SHA-256", sha256);
    }
}
