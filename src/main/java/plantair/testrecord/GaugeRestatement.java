package plantair.testrecord;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
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
    private Instant restatedAt;
    private String restatedBy;
    private String note;

    protected GaugeRestatement() {}

    GaugeRestatement(long calibrationId, Instant restatedAt, String restatedBy, String note) {
        this.calibrationId = calibrationId;
        this.restatedAt = restatedAt;
        this.restatedBy = restatedBy;
        this.note = note;
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
