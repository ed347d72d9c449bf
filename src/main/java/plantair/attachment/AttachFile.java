package plantair.attachment;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.Objects;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.NoSuchRecord;

/** Attaches a file to a record, and withdraws it; each with its line in the list of changes. */
@Service
public class AttachFile {

    private final Attachments attachments;
    private final AttachmentWithdrawals withdrawals;
    private final Pieces pieces;
    private final AttachedObjects objects;
    private final Changes changes;
    private final TransactionTemplate transaction;
    private final Clock clock;

    AttachFile(
            Attachments attachments,
            AttachmentWithdrawals withdrawals,
            Pieces pieces,
            AttachedObjects objects,
            Changes changes,
            TransactionTemplate transaction,
            Clock clock) {
        this.attachments = attachments;
        this.withdrawals = withdrawals;
        this.pieces = pieces;
        this.objects = objects;
        this.changes = changes;
        this.transaction = transaction;
        this.clock = clock;
    }

    /**
     * Attaches a file that was checked; the same submission a second time gives that of the first.
     *
     * @throws NoSuchRecord when there is no such record
     */
    public Attachment attach(AttachmentDraft draft, ReceivedFile file, FileFormat format, String by) {
        try {
            return tryTo(draft, file, format, by);
        } catch (DataIntegrityViolationException overtaken) {
            // somebody else stored the same bytes, or sent the same form, at the same moment: now they are there
            return tryTo(draft, file, format, by);
        }
    }

    private Attachment tryTo(AttachmentDraft draft, ReceivedFile file, FileFormat format, String by) {
        return Objects.requireNonNull(transaction.execute(status ->
                attachments.findBySubmission(draft.submission()).orElseGet(() -> save(draft, file, format, by))));
    }

    private Attachment save(AttachmentDraft draft, ReceivedFile file, FileFormat format, String by) {
        String object = objects.name(draft.to(), draft.objectId());
        try {
            pieces.store(file.sha256(), file.path());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        Attachment attachment = attachments.saveAndFlush(new Attachment(draft, file, format, clock.instant(), by));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.ATTACHMENT,
                attachment.id(),
                object,
                null,
                attachment.lines().toString(),
                "attached"));
        return attachment;
    }

    /**
     * Withdraws an attachment; one that is withdrawn stays so.
     *
     * @throws NoSuchRecord when there is none of that id
     */
    public AttachmentWithdrawal withdraw(long id, UUID submission, String reason, String by) {
        return Objects.requireNonNull(transaction.execute(status -> {
            Attachment attachment = attachments.findById(id).orElseThrow(() -> new NoSuchRecord("attachment " + id));
            return withdrawals.findByAttachmentId(id).orElseGet(() -> save(attachment, submission, reason, by));
        }));
    }

    private AttachmentWithdrawal save(Attachment attachment, UUID submission, String reason, String by) {
        AttachmentWithdrawal withdrawal = withdrawals.saveAndFlush(
                new AttachmentWithdrawal(attachment.id(), submission, clock.instant(), by, reason));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.ATTACHMENT,
                attachment.id(),
                objects.name(attachment.to(), attachment.objectId()),
                attachment.lines().toString(),
                attachment.lines().add("withdrawn", true).toString(),
                reason));
        return withdrawal;
    }
}
