package plantair.backup;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A finished backup.
 *
 * @param name its file
 * @param takenAt when it was begun: it holds what was saved before
 * @param kind what it was made for
 * @param bytes its size
 * @param sha256 what the file beside it says of its content, in hexadecimal digits
 */
public record BackupFile(String name, Instant takenAt, BackupKind kind, long bytes, String sha256) {

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final Pattern NAME =
            Pattern.compile("plant-air-(\\d{4}-\\d\\d-\\d\\dT\\d{6}Z)-(daily|by-hand)(-\\d{1,3})?\\.sql\\.gz");

    /** The name of a backup; the number tells those of one second apart and is left out when it is 1. */
    static String name(Instant takenAt, BackupKind kind, int number) {
        return "plant-air-" + STAMP.format(takenAt) + "-" + kind.word() + (number == 1 ? "" : "-" + number) + ".sql.gz";
    }

    /** A backup by its name; empty when the name is none of a backup. */
    static Optional<BackupFile> named(String name, long bytes, String sha256) {
        Matcher parts = NAME.matcher(name);
        return parts.matches()
                ? Optional.of(new BackupFile(
                        name, STAMP.parse(parts.group(1), Instant::from), BackupKind.of(parts.group(2)), bytes, sha256))
                : Optional.empty();
    }

    static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }
}
