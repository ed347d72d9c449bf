package plantair.instrument;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderColumn;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;

/** A calibration of an instrument. Written once; a correction is another one that names this one. */
@Entity
@Immutable
@NullUnmarked
public class Calibration {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;

    @ManyToOne
    private Instrument instrument;

    @Embedded
    private Certificate certificate;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "calibration_point", joinColumns = @JoinColumn(name = "calibration_id"))
    @OrderColumn(name = "position")
    private List<AsFound> points = new ArrayList<>();

    private Instant recordedAt;
    private String recordedBy;
    private @Nullable Long supersedesId;
    private @Nullable String reason;

    protected Calibration() {}

    Calibration(CalibrationDraft draft, Instant recordedAt, String recordedBy, @Nullable Correction correction) {
        submission = draft.submission();
        instrument = draft.instrument();
        certificate = draft.certificate();
        points.addAll(draft.points());
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
        supersedesId = correction == null ? null : correction.supersedesId();
        reason = correction == null ? null : correction.reason();
    }

    /**
     * Why a calibration takes the place of another.
     *
     * @param supersedesId the one it corrects
     * @param reason why
     */
    record Correction(long supersedesId, String reason) {}

    public long id() {
        return id;
    }

    public Instrument instrument() {
        return instrument;
    }

    public Certificate certificate() {
        return certificate;
    }

    public LocalDate doneOn() {
        return certificate.doneOn();
    }

    public LocalDate dueOn() {
        return certificate.dueOn();
    }

    /** What was found before any adjustment, in the order of the certificate; may be empty. */
    public List<AsFound> points() {
        return List.copyOf(points);
    }

    /** Whether it was found reading wrong anywhere. */
    public boolean foundErrors() {
        return points.stream().anyMatch(point -> point.error().value() != 0);
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    public String recordedBy() {
        return recordedBy;
    }

    /** The calibration that this one corrects; null when it is the first. */
    public @Nullable Long supersedesId() {
        return supersedesId;
    }

    /** Why it corrects that one; null when it is the first. */
    public @Nullable String reason() {
        return reason;
    }
}
