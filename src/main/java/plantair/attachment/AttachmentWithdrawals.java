package plantair.attachment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

/** What was withdrawn; it can be added and read, not altered. */
public interface AttachmentWithdrawals extends Repository<AttachmentWithdrawal, Long> {

    AttachmentWithdrawal saveAndFlush(AttachmentWithdrawal withdrawal);

    Optional<AttachmentWithdrawal> findByAttachmentId(long attachmentId);

    List<AttachmentWithdrawal> findByAttachmentIdIn(Collection<Long> attachmentIds);
}
