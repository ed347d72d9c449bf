package plantair.backup;

import java.util.Locale;

/** What a backup was made for. */
public enum BackupKind {
    /** By the daily schedule; removed by its retention. */
    DAILY,
    /** By a person; only a person removes it. */
    BY_HAND;

    /** The kind as it stands in the name of a file. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static BackupKind of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
