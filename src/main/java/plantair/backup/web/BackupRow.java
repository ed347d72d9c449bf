package plantair.backup.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import plantair.backup.BackupFile;

/** One backup in the list. */
record BackupRow(String name, String instant, String when, String kind, String megabytes, String sha256) {

    static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final double MEGABYTE = 1_000_000;

    static BackupRow of(BackupFile file) {
        return new BackupRow(
                file.name(),
                file.takenAt().toString(),
                WHEN.format(file.takenAt()),
                file.kind().name(),
                String.format(Locale.ROOT, "%.3f", file.bytes() / MEGABYTE),
                file.sha256());
    }
}
