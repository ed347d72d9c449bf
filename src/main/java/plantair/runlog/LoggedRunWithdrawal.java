package plantair.runlog;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.springframework.data.domain.Persistable;

/** Somebody said that a logged run does not count: another run, or a wrong column. Written once. */
@Entity
@Immutable
@NullUnmarked
public class LoggedRunWithdrawal implements Persistable<Long> {

    @Id
    private Long loggedRunId;

    private UUID submission;
    private Instant withdrawnAt;
    private String withdrawnBy;
    private String reason;

    protected LoggedRunWithdrawal() {}

    LoggedRunWithdrawal(long loggedRunId, UUID submission, Instant withdrawnAt, String withdrawnBy, String reason) {
        this.loggedRunId = loggedRunId;
        this.submission = submission;
        this.withdrawnAt = withdrawnAt;
        this.withdrawnBy = withdrawnBy;
        this.reason = reason;
    }

    @Override
    public Long getId() {
        return loggedRunId;
    }

    /** Only ever added. */
    @Override
    public boolean isNew() {
        return true;
    }

    public Instant withdrawnAt() {
        return withdrawnAt;
    }

    public String withdrawnBy() {
        return withdrawnBy;
    }

    public String reason() {
        return reason;
    }
}
