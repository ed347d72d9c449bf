package plantair.testrecord;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;

/** A second person looked at a test and found it fit to stand. Written once; from then on the test is locked. */
@Entity
@Immutable
@NullUnmarked
public class TestReview {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long testId;
    private Instant reviewedAt;
    private String reviewedBy;
    private String note;

    protected TestReview() {}

    TestReview(UUID submission, long testId, Instant reviewedAt, String reviewedBy, String note) {
        this.submission = submission;
        this.testId = testId;
        this.reviewedAt = reviewedAt;
        this.reviewedBy = reviewedBy;
        this.note = note;
    }

    long id() {
        return id;
    }

    public long testId() {
        return testId;
    }

    public Instant reviewedAt() {
        return reviewedAt;
    }

    public String reviewedBy() {
        return reviewedBy;
    }

    public String note() {
        return note;
    }
}
