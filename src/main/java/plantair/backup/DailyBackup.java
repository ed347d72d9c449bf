package plantair.backup;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** One backup a day of the H2 file. Old ones go only after a new one is there. */
@Component
class DailyBackup {

    private static final Logger LOG = LoggerFactory.getLogger(DailyBackup.class);
    private static final Duration BEFORE_ANOTHER_TRY = Duration.ofHours(1);

    private final Backups backups;
    private final Schedule schedule;
    private final Clock clock;

    DailyBackup(Backups backups, Schedule schedule, Clock clock) {
        this.backups = backups;
        this.schedule = schedule;
        this.clock = clock;
    }

    /** Looks every minute; after a failure it waits an hour. */
    @Scheduled(fixedDelayString = "PT1M", initialDelayString = "PT1M")
    void makeWhenDue() throws IOException {
        Instant now = clock.instant();
        if (!backups.areOfFile() || hasJustFailed(now) || isMade(schedule.lastDue(now))) {
            return;
        }
        try {
            backups.make(BackupKind.DAILY);
            backups.expire(schedule.retention());
        } catch (BackupFailed failed) {
            LOG.warn("The next try is in {}", BEFORE_ANOTHER_TRY);
        }
    }

    private boolean hasJustFailed(Instant now) {
        return backups.failure()
                .filter(last -> last.at().plus(BEFORE_ANOTHER_TRY).isAfter(now))
                .isPresent();
    }

    private boolean isMade(Instant due) throws IOException {
        return backups.list().stream()
                .filter(file -> file.kind() == BackupKind.DAILY)
                .anyMatch(file -> !file.takenAt().isBefore(due));
    }
}
