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
import plantair.runlog.LogText;
import plantair.runlog.RefusedLog;

/** The bytes of photos, papers and logs in the zip of everything. */
@Component
class AttachedBytes {

    private static final String PAPERS = "attachment";
    private static final String LOGS = "logged_run";
    private static final String DIGEST = "sha256";

    private final Pieces pieces;
    private final FileCheck check;

    AttachedBytes(Pieces pieces, FileCheck check) {
        this.pieces = pieces;
        this.check = check;
    }

    /**
     * Stores the bytes that a row of attachments.csv or logged_runs.csv names, unless they are there; a row of another file names none.
     *
     * @return false when they are not in the zip, are others, or may not be attached
     */
    boolean take(DataFile file, List<?> values, UnpackedZip zip, Remarks problems) {
        boolean paper = file.table().equals(PAPERS);
        if (!paper && !file.table().equals(LOGS)) {
            return true;
        }
        String sha256 = String.valueOf(values.get(column(file)));
        Optional<Path> bytes = zip.attached(sha256);
        boolean sound = bytes.isPresent() && isSound(sha256, bytes.get(), paper);
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

    private boolean isSound(String sha256, Path bytes, boolean paper) {
        try {
            if (!Digest.of(bytes).equals(sha256)) {
                return false;
            }
            if (!pieces.exists(sha256)) {
                check(bytes, paper);
                pieces.store(sha256, bytes);
            }
            return true;
        } catch (RefusedFile | RefusedLog refused) {
            return false;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void check(Path bytes, boolean paper) throws IOException, RefusedFile, RefusedLog {
        if (paper) {
            check.check(bytes);
        } else {
            LogText.of(bytes);
        }
    }
}
