package plantair.backup;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which daily backups stay: the last one of each of the newest days that have one, and the last one of each of the newest
 * months that have one. Backups made by hand always stay.
 *
 * @param days how many days
 * @param months how many months
 * @param zone whose days and months
 */
record Retention(int days, int months, ZoneId zone) {

    /** What may go, of a list with the newest first. */
    List<BackupFile> expired(List<BackupFile> newestFirst) {
        Set<LocalDate> keptDays = new HashSet<>();
        Set<YearMonth> keptMonths = new HashSet<>();
        return newestFirst.stream()
                .filter(file -> file.kind() == BackupKind.DAILY)
                .filter(file -> {
                    LocalDate day = file.takenAt().atZone(zone).toLocalDate();
                    boolean ofDay = keptDays.size() < days && keptDays.add(day);
                    boolean ofMonth = keptMonths.size() < months && keptMonths.add(YearMonth.from(day));
                    return !ofDay && !ofMonth;
                })
                .toList();
    }
}
