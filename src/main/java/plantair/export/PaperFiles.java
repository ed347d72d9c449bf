package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.text;

import java.util.List;
import java.util.regex.Pattern;
import plantair.attachment.AttachedTo;
import plantair.attachment.FileFormat;

/** Photos and papers; their bytes lie beside the files, each under its digest. */
final class PaperFiles {

    /** The column by which a row finds its bytes. */
    static final String DIGEST = "sha256";

    private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");

    private PaperFiles() {}

    static DataFile attachments() {
        return DataFile.of(
                "attachments",
                "attachment",
                "a photo or paper of a record; its bytes are in the folder files of the zip",
                RegisterFiles.BY_ID,
                id("attachment_id", "id", "number of the attachment"),
                InstrumentFiles.SUBMISSION,
                code("kind", "kind of the record that it belongs to", AttachedTo.class),
                id("object_id", "object_id", "number of that record, in the file of its kind"),
                code(DIGEST, "SHA-256 of its bytes, and the name of its file", PaperFiles::digest),
                code("format", "what it is, told from its bytes", FileFormat.class),
                of(CellKind.ID, "byte_count", "byte_count", "how many bytes it has"),
                text("name", "name of the file as it was sent"),
                text("description", "what it shows"),
                of(CellKind.MOMENT, "attached_at", "when it was attached, ISO 8601, UTC"),
                text("attached_by", "who attached it"));
    }

    static String digest(String cell) {
        if (!SHA256.matcher(cell).matches()) {
            throw new IllegalArgumentException("no SHA-256: " + cell);
        }
        return cell;
    }

    static DataFile withdrawals() {
        return DataFile.of(
                "attachment_withdrawals",
                "attachment_withdrawal",
                "that a photo or paper was withdrawn; it stays on record",
                List.of("attachment_id"),
                id("attachment_id", "attachment_id", "the attachment, in attachments.csv"),
                InstrumentFiles.SUBMISSION,
                of(CellKind.MOMENT, "withdrawn_at", "when, ISO 8601, UTC"),
                text("withdrawn_by", "who"),
                text("reason", "why"));
    }
}
