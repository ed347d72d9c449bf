package plantair.audit;

import java.util.List;
import org.springframework.stereotype.Component;
import plantair.attachment.FileHolder;
import plantair.attachment.Pieces;
import plantair.audit.Fault.Code;

/** Compares the bytes of attached files with the digest in the records; the records are compared by themselves. */
@Component
class BytesCheck {

    private static final int BATCH = 100;

    private final Pieces pieces;
    private final List<FileHolder> holders;

    BytesCheck(Pieces pieces, List<FileHolder> holders) {
        this.pieces = pieces;
        this.holders = holders;
    }

    void compare(Faults faults) {
        List<String> digests = pieces.digestsAfter("", BATCH);
        while (!digests.isEmpty()) {
            digests.forEach(sha256 -> compare(sha256, faults));
            digests = pieces.digestsAfter(digests.get(digests.size() - 1), BATCH);
        }
    }

    private void compare(String sha256, Faults faults) {
        List<String> records = holders.stream()
                .flatMap(holder -> holder.recordsWith(sha256).stream())
                .toList();
        if (records.isEmpty()) {
            faults.add(Code.BYTES_WITHOUT_RECORD, 0, sha256);
        } else if (!pieces.areUnaltered(sha256)) {
            records.forEach(record -> faults.add(Code.BYTES_ALTERED, 0, record));
        }
    }
}
