package plantair.attachment;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * An attachment as pages and reports tell of it.
 *
 * @param id its number
 * @param to kind of the record that it belongs to
 * @param objectId number of that record
 * @param name name of the file
 * @param description what is on it
 * @param format what it is
 * @param size as people say it
 * @param sha256 digest of its bytes
 * @param at when it was attached, UTC
 * @param by who attached it
 * @param withdrawn when, by whom and why; null while it stands
 */
public record AttachedFile(
        long id,
        AttachedTo to,
        long objectId,
        String name,
        String description,
        FileFormat format,
        String size,
        String sha256,
        String at,
        String by,
        @Nullable Withdrawn withdrawn) {

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final long KILO = 1_000;
    private static final long MEGA = 1_000_000;

    /** When, by whom and why it was withdrawn. */
    public record Withdrawn(String at, String by, String reason) {}

    static AttachedFile of(Attachment attachment, @Nullable AttachmentWithdrawal withdrawal) {
        return new AttachedFile(
                attachment.id(),
                attachment.to(),
                attachment.objectId(),
                attachment.name(),
                attachment.description(),
                attachment.format(),
                size(attachment.byteCount()),
                attachment.sha256(),
                WHEN.format(attachment.attachedAt()),
                attachment.attachedBy(),
                withdrawal == null
                        ? null
                        : new Withdrawn(
                                WHEN.format(withdrawal.withdrawnAt()), withdrawal.withdrawnBy(), withdrawal.reason()));
    }

    private static String size(long bytes) {
        if (bytes < KILO) {
            return bytes + " B";
        }
        return bytes < MEGA ? (bytes + KILO / 2) / KILO + " kB" : tenths(bytes) + " MB";
    }

    private static String tenths(long bytes) {
        long tenths = (bytes + MEGA / 20) / (MEGA / 10);
        return tenths / 10 + "." + tenths % 10;
    }

    /** Whether a page can show it. */
    public boolean isPicture() {
        return format.isPicture();
    }
}
