package plantair.audit;

import java.util.List;
import org.springframework.stereotype.Component;
import plantair.attachment.Attachment;
import plantair.attachment.Attachments;
import plantair.attachment.Pieces;
import plantair.audit.Fault.Code;
import plantair.register.ChangeKind;

/** Compares the bytes of attached files with the digest in the records; the records are compared by themselves. */
@Component
class BytesCheck {

    private static final int BATCH = 100;

    private final Pieces pieces;
    private final Attachments attachments;

    BytesCheck(Pieces pieces, Attachments attachments) {
        this.pieces = pieces;
        this.attachments = attachments;
    }

    void compare(Faults faults) {
        List<String> digests = pieces.digestsAfter("", BATCH);
        while (!digests.isEmpty()) {
            digests.forEach(sha256 -> compare(sha256, faults));
            digests = pieces.digestsAfter(digests.get(digests.size() - 1), BATCH);
        }
    }

    private void compare(String sha256, Faults faults) {
        List<Attachment> holders = attachments.findBySha256OrderById(sha256);
        if (holders.isEmpty()) {
            faults.add(Code.BYTES_WITHOUT_RECORD, 0, sha256);
        } else if (!pieces.areUnaltered(sha256)) {
            holders.forEach(holder -> faults.add(Code.BYTES_ALTERED, 0, ChangeKind.ATTACHMENT + " " + holder.id()));
        }
    }
}
