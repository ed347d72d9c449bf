package plantair.testrecord;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;

/** A signed decision that what a calibration found restates the tests made with that gauge before it. */
@Entity
@Immutable
@NullUnmarked
public class GaugeRestatement {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long calibrationId;

    /** The tests that were touched when it was signed; later certificates change nothing of it. */
    @ElementCollection
    @CollectionTable(name = "gauge_restatement_test", joinColumns = @JoinColumn(name = "restatement_id"))
    @Column(name = "test_id")
    private Set<Long> tests = new HashSet<>();

    private Instant restatedAt;
    private String restatedBy;
    private String note;

    protected GaugeRestatement() {}

    GaugeRestatement(long calibrationId, Collection<Long> tests, Instant restatedAt, String restatedBy, String note) {
        this.calibrationId = calibrationId;
        this.tests.addAll(tests);
        this.restatedAt = restatedAt;
        this.restatedBy = restatedBy;
        this.note = note;
    }

    long id() {
        return id;
    }

    public long calibrationId() {
        return calibrationId;
    }

    public Instant restatedAt() {
        return restatedAt;
    }

    public String restatedBy() {
        return restatedBy;
    }

    public String note() {
        return note;
    }
}
