package plantair.testrecord;

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
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Compressor;
import plantair.equipment.RatingEntry;

/** A pump-up test as it was recorded. Written once; a correction is another test that names this one. */
@Entity
@Immutable
@NullUnmarked
public class PumpUpTest {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;

    @ManyToOne(fetch = FetchType.LAZY)
    private Compressor compressor;

    private Instant performedAt;
    private String zone;
    private String tester;

    @Embedded
    private TestConditions conditions;

    @ElementCollection
    @CollectionTable(name = "pump_up_volume", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<VolumeCopy> volumes = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "pump_up_rating", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<RatingEntry> ratings = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "pump_up_run", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<RunEntry> runs = new ArrayList<>();

    @Embedded
    private @Nullable TestChecks checks;

    @ElementCollection
    @CollectionTable(name = "pump_up_instrument", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<InstrumentCopy> instruments = new ArrayList<>();

    @Embedded
    private @Nullable LearnedCopy learned;

    @Embedded
    private @Nullable GuideLog guide;

    private @Nullable String overrideReason;
    private String notes;
    private String confirmed;
    private String methodVersion;
    private Instant recordedAt;
    private String recordedBy;
    private @Nullable Long supersedesId;
    private @Nullable String reason;

    protected PumpUpTest() {}

    PumpUpTest(
            TestDraft draft,
            @Nullable LearnedCopy learned,
            Instant recordedAt,
            String recordedBy,
            @Nullable Correction correction) {
        this.learned = learned;
        submission = draft.submission();
        compressor = draft.compressor();
        performedAt = draft.performedAt();
        zone = draft.zone();
        tester = draft.tester();
        conditions = draft.conditions();
        volumes.addAll(draft.volumes());
        ratings.addAll(draft.ratings());
        runs.addAll(draft.runs());
        checks = draft.checks();
        instruments.addAll(draft.instruments());
        overrideReason = draft.overrideReason();
        guide = draft.guide();
        notes = draft.notes();
        confirmed = draft.confirmed();
        methodVersion = draft.methodVersion();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
        supersedesId = correction == null ? null : correction.supersedesId();
        reason = correction == null ? null : correction.reason();
    }

    /**
     * Why a test takes the place of another.
     *
     * @param supersedesId the test it corrects
     * @param reason why
     */
    record Correction(long supersedesId, String reason) {}

    public long id() {
        return id;
    }

    public UUID submission() {
        return submission;
    }

    public Compressor compressor() {
        return compressor;
    }

    public Instant performedAt() {
        return performedAt;
    }

    public ZoneId zone() {
        return ZoneId.of(zone);
    }

    public String tester() {
        return tester;
    }

    public TestConditions conditions() {
        return conditions;
    }

    public List<VolumeCopy> volumes() {
        return List.copyOf(volumes);
    }

    public List<RatingEntry> ratings() {
        return List.copyOf(ratings);
    }

    public List<RunEntry> runs() {
        return List.copyOf(runs);
    }

    public TestChecks checks() {
        return checks == null ? TestChecks.NONE : checks;
    }

    public List<InstrumentCopy> instruments() {
        return List.copyOf(instruments);
    }

    /** The machine's own warming factor on the day of recording; null when none was known or needed. */
    public @Nullable LearnedCopy learned() {
        return learned;
    }

    /** Why an instrument past its date was used; null when none was. */
    public @Nullable String overrideReason() {
        return overrideReason;
    }

    /** What a guided test keeps beside its readings; null for any other. */
    public @Nullable GuideLog guide() {
        return guide;
    }

    public String notes() {
        return notes;
    }

    public String confirmed() {
        return confirmed;
    }

    public String methodVersion() {
        return methodVersion;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    public String recordedBy() {
        return recordedBy;
    }

    /** The test that this one corrects; null when it is the first. */
    public @Nullable Long supersedesId() {
        return supersedesId;
    }

    /** Why it corrects that test; null when it is the first. */
    public @Nullable String reason() {
        return reason;
    }
}
