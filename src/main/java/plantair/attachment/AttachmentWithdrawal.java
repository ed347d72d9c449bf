package plantair.attachment;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.springframework.data.domain.Persistable;

/** Somebody said that an attachment does not belong where it is. Written once. */
@Entity
@Immutable
@NullUnmarked
public class AttachmentWithdrawal implements Persistable<Long> {

    @Id
    private Long attachmentId;

    private UUID submission;
    private Instant withdrawnAt;
    private String withdrawnBy;
    private String reason;

    protected AttachmentWithdrawal() {}

    AttachmentWithdrawal(long attachmentId, UUID submission, Instant withdrawnAt, String withdrawnBy, String reason) {
        this.attachmentId = attachmentId;
        this.submission = submission;
        this.withdrawnAt = withdrawnAt;
        this.withdrawnBy = withdrawnBy;
        this.reason = reason;
    }

    @Override
    public Long getId() {
        return attachmentId;
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
