package plantair.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which backups stay. */
final class RetentionTests {

    private static BackupFile of(Instant at, BackupKind kind) {
        return BackupFile.named(BackupFile.name(at, kind, 1), 1, "0".repeat(64)).orElseThrow();
    }

    private static BackupFile daily(LocalDate day) {
        return of(day.atTime(2, 30).toInstant(ZoneOffset.UTC), BackupKind.DAILY);
    }

    /** Two years of days, seven daily and three monthly ones kept: counted by hand on the calendar of 2026. */
    @Test
    void keepsTheNewestDaysAndTheLastOfEachMonth() {
        List<BackupFile> all = new ArrayList<>();
        for (LocalDate day = LocalDate.of(2024, 6, 15);
                !day.isAfter(LocalDate.of(2026, 6, 15));
                day = day.plusDays(1)) {
            all.add(daily(day));
        }
        all.sort(Comparator.comparing(BackupFile::takenAt).reversed());

        List<BackupFile> kept = new ArrayList<>(all);
        kept.removeAll(new Retention(7, 3, ZoneOffset.UTC).expired(all));

        assertThat(kept)
                .extracting(file ->
                        file.takenAt().atZone(ZoneOffset.UTC).toLocalDate().toString())
                .containsExactly(
                        "2026-06-15",
                        "2026-06-14",
                        "2026-06-13",
                        "2026-06-12",
                        "2026-06-11",
                        "2026-06-10",
                        "2026-06-09",
                        "2026-05-31",
                        "2026-04-30");
    }

    @Test
    void neverTakesWhatWasMadeByHand() {
        var byHand = of(Instant.parse("2020-01-01T00:00:00Z"), BackupKind.BY_HAND);
        var old = daily(LocalDate.of(2020, 1, 1));

        assertThat(new Retention(0, 0, ZoneOffset.UTC).expired(List.of(old, byHand)))
                .containsExactly(old);
    }
}
