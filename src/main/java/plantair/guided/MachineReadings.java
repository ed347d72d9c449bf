package plantair.guided;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.ZoneId;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.register.FactLines;

/** The readings of a machine at one time. Written once; a correction is another record that names this one. */
@Entity
@Immutable
@NullUnmarked
public class MachineReadings {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long compressorId;
    private @Nullable Long testId;
    private Instant readAt;
    private String zone;
    private String reader;

    @Embedded
    private MachineFigures figures;

    private Instant recordedAt;
    private String recordedBy;
    private @Nullable Long supersedesId;
    private @Nullable String reason;

    protected MachineReadings() {}

    MachineReadings(ReadingsDraft draft, Instant recordedAt, String recordedBy, @Nullable Correction correction) {
        submission = draft.submission();
        compressorId = draft.compressorId();
        testId = draft.testId();
        readAt = draft.readAt();
        zone = draft.zone();
        reader = draft.reader();
        figures = draft.figures();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
        supersedesId = correction == null ? null : correction.supersedesId();
        reason = correction == null ? null : correction.reason();
    }

    /**
     * Why readings take the place of others.
     *
     * @param supersedesId those they correct
     * @param reason why
     */
    record Correction(long supersedesId, String reason) {}

    public long id() {
        return id;
    }

    public long compressorId() {
        return compressorId;
    }

    /** The test at which they were read; null when there was none. */
    public @Nullable Long testId() {
        return testId;
    }

    public Instant readAt() {
        return readAt;
    }

    public ZoneId zone() {
        return ZoneId.of(zone);
    }

    public String reader() {
        return reader;
    }

    public MachineFigures figures() {
        return figures;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    public String recordedBy() {
        return recordedBy;
    }

    /** The readings that these correct; null when they are the first. */
    public @Nullable Long supersedesId() {
        return supersedesId;
    }

    /** Why they take their place; null when they are the first. */
    public @Nullable String reason() {
        return reason;
    }

    /** The same once more with other figures. */
    ReadingsDraft draft(UUID otherSubmission, MachineFigures others) {
        return new ReadingsDraft(otherSubmission, compressorId, testId, readAt, zone, reader, others);
    }

    /** One fact a line for the change log. */
    String lines() {
        return new FactLines()
                .add("readings", id)
                .add("test", testId)
                .add("read at", readAt)
                .add("read by", reader)
                .add("hours", figures.hours())
                .add("loaded hours", figures.loadedHours())
                .add("current 1", figures.current1())
                .add("current 2", figures.current2())
                .add("current 3", figures.current3())
                .add("interstage pressure", figures.interstagePressure())
                .add("discharge temperature", figures.dischargeTemperature())
                .add("oil level", figures.oilLevel())
                .add("filter drop", figures.filterDrop())
                .add("separator drop", figures.separatorDrop())
                .add("belt", figures.belt())
                .add("speed", figures.speed())
                .add("noise", figures.noise())
                .toString();
    }
}
