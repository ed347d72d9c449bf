package plantair.attachment;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;

/** What is attached to records, for pages and reports. */
@Service
public class AttachedFiles {

    private final Attachments attachments;
    private final AttachmentWithdrawals withdrawals;

    AttachedFiles(Attachments attachments, AttachmentWithdrawals withdrawals) {
        this.attachments = attachments;
        this.withdrawals = withdrawals;
    }

    /** Those of a record, oldest first, withdrawn ones too. */
    public List<AttachedFile> of(AttachedTo to, long objectId) {
        return withWithdrawals(attachments.findByKindAndObjectIdOrderById(to, objectId));
    }

    /** Those of some records of a kind, oldest first, withdrawn ones too. */
    public List<AttachedFile> of(AttachedTo to, Collection<Long> objectIds) {
        return objectIds.isEmpty()
                ? List.of()
                : withWithdrawals(attachments.findByKindAndObjectIdInOrderById(to, objectIds));
    }

    /** Those with these numbers. */
    public List<AttachedFile> withIds(Collection<Long> ids) {
        return ids.isEmpty() ? List.of() : withWithdrawals(attachments.findByIdInOrderById(ids));
    }

    private List<AttachedFile> withWithdrawals(List<Attachment> found) {
        Map<Long, AttachmentWithdrawal> withdrawn = found.isEmpty()
                ? Map.of()
                : withdrawals
                        .findByAttachmentIdIn(found.stream().map(Attachment::id).toList())
                        .stream()
                        .collect(Collectors.toMap(AttachmentWithdrawal::getId, Function.identity()));
        return found.stream()
                .map(one -> AttachedFile.of(one, withdrawn.get(one.id())))
                .toList();
    }
}
