package plantair.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The schedule, by a clock that the test turns. */
final class DailyBackupTests {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    @TempDir
    private Path folder;

    private final TurnedClock clock = new TurnedClock();
    private Backups backups;
    private DailyBackup daily;

    private static final class TurnedClock extends Clock {
        private Instant now = Instant.parse("2026-06-15T12:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private static DataSource database(String url) {
        var database = new JdbcDataSource();
        database.setURL(url);
        database.setUser("sa");
        return database;
    }

    @BeforeEach
    void onAFile() throws SQLException {
        use(database("jdbc:h2:" + folder.resolve("plant")), 2);
    }

    private void use(DataSource database, int days) throws SQLException {
        try (var connection = database.getConnection()) {
            connection.createStatement().execute("create table if not exists t (id int primary key)");
        }
        backups = new Backups(database, folder.resolve("backups"), clock);
        daily = new DailyBackup(
                backups, new Schedule(LocalTime.of(2, 30), CHICAGO, new Retention(days, 1, CHICAGO)), clock);
    }

    private void at(String time) throws IOException {
        clock.now = Instant.parse(time);
        daily.makeWhenDue();
    }

    private List<String> made() throws IOException {
        return backups.list().stream().map(file -> file.takenAt().toString()).toList();
    }

    @Test
    void makesOneADayAtItsTime() throws IOException {
        at("2026-06-15T07:31:00Z"); // 02:31 in Chicago
        at("2026-06-15T07:32:00Z");
        at("2026-06-16T07:29:00Z");
        assertThat(made()).containsExactly("2026-06-15T07:31:00Z");

        at("2026-06-16T07:30:00Z");

        assertThat(made()).containsExactly("2026-06-16T07:30:00Z", "2026-06-15T07:31:00Z");
    }

    @Test
    void makesUpForOneThatWasMissed() throws IOException {
        at("2026-06-15T07:31:00Z");

        at("2026-06-18T15:00:00Z");

        assertThat(made()).containsExactly("2026-06-18T15:00:00Z", "2026-06-15T07:31:00Z");
    }

    /** A backup by hand is no reason to leave the daily one out: the person may have moved it elsewhere. */
    @Test
    void countsNoBackupByHand() throws IOException {
        clock.now = Instant.parse("2026-06-15T07:31:00Z");
        backups.make(BackupKind.BY_HAND);

        at("2026-06-15T07:32:00Z");

        assertThat(made()).hasSize(2);
    }

    @Test
    void removesOldOnesOnlyAfterANewOneSucceeded() throws IOException {
        at("2026-06-15T08:00:00Z");
        at("2026-06-16T08:00:00Z");
        Path elsewhere = folder.resolve("elsewhere");
        Files.move(folder.resolve("backups"), elsewhere);
        Files.createFile(folder.resolve("backups")); // no folder: nothing can be made in it

        at("2026-06-17T08:00:00Z");

        assertThat(backups.failure())
                .hasValueSatisfying(
                        failure -> assertThat(failure.at()).isEqualTo(Instant.parse("2026-06-17T08:00:00Z")));
        Files.delete(folder.resolve("backups"));
        Files.move(elsewhere, folder.resolve("backups"));
        assertThat(made()).as("nothing was removed").hasSize(2);

        at("2026-06-17T08:30:00Z");
        assertThat(made()).as("it waits an hour after a failure").hasSize(2);

        at("2026-06-17T09:00:00Z");
        assertThat(made()).containsExactly("2026-06-17T09:00:00Z", "2026-06-16T08:00:00Z");
        assertThat(backups.failure()).isEmpty();
    }

    @Test
    void leavesNothingOfAFailedOne() throws IOException {
        var broken = new BackupFolder(folder.resolve("backups"));

        assertThatThrownBy(() -> broken.add(BackupKind.DAILY, clock.now, part -> {
                    Files.writeString(part, "half");
                    throw new IOException("No space left on device");
                }))
                .isInstanceOf(IOException.class);

        try (Stream<Path> left = Files.list(folder.resolve("backups"))) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void isForFilesOnly() throws IOException, SQLException {
        use(database("jdbc:h2:mem:scheduled;DB_CLOSE_DELAY=-1"), 2);

        at("2026-06-15T08:00:00Z");

        assertThat(made()).isEmpty();
    }
}
