package plantair.transfer;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.attachment.FileCheck;
import plantair.attachment.Pieces;
import plantair.attachment.RefusedFile;
import plantair.export.DataColumn;
import plantair.export.DataFile;

/** The bytes of photos and papers in the zip of everything. */
@Component
class AttachedBytes {

    private static final String TABLE = "attachment";
    private static final String DIGEST = "sha256";

    private final Pieces pieces;
    private final FileCheck check;

    AttachedBytes(Pieces pieces, FileCheck check) {
        this.pieces = pieces;
        this.check = check;
    }

    /**
     * Stores the bytes that a row of attachments.csv names, unless they are there; a row of another file names none.
     *
     * @return false when they are not in the zip, are others, or may not be attached
     */
    boolean take(DataFile file, List<?> values, UnpackedZip zip, Remarks problems) {
        if (!file.table().equals(TABLE)) {
            return true;
        }
        String sha256 = String.valueOf(values.get(column(file)));
        Optional<Path> bytes = zip.attached(sha256);
        boolean sound = bytes.isPresent() && isSound(sha256, bytes.get());
        if (!sound) {
            problems.add(
                    UnpackedZip.csv(file.name()),
                    0,
                    DIGEST,
                    bytes.isPresent() ? "import.attached.broken" : "import.attached.missing",
                    sha256);
        }
        return sound;
    }

    private static int column(DataFile file) {
        return file.columns().stream().map(DataColumn::column).toList().indexOf(DIGEST);
    }

    private boolean isSound(String sha256, Path bytes) {
        try {
            if (!Digest.of(bytes).equals(sha256)) {
                return false;
            }
            if (!pieces.exists(sha256)) {
                check.check(bytes);
                pieces.store(sha256, bytes);
            }
            return true;
        } catch (RefusedFile refused) {
            return false;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
