package plantair.operation;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.time.Clock;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.backup.BackupKind;
import plantair.backup.Backups;
import plantair.history.MachineStates;
import plantair.register.Changes;
import plantair.testing.Database;
import plantair.testing.FixedClock;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;

/** The figures of our own against what is in the database. */
abstract class OperationFiguresTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    private final SimpleMeterRegistry registry = new SimpleMeterRegistry();
    private OperationFigures figures;

    @BeforeEach
    void startEmpty() {
        database.wipe();
        figures = figures(Clock.offset(context.getBean(Clock.class), Duration.ofHours(3)));
        figures.bindTo(registry);
    }

    private OperationFigures figures(Clock clock) {
        return new OperationFigures(
                context.getBean(Changes.class),
                context.getBean(MachineStates.class),
                context.getBean(Backups.class),
                clock);
    }

    private double gauge(String name) {
        return registry.get(name).gauge().value();
    }

    @Test
    void areNotKnownUntilTheyWereRead() {
        assertThat(gauge("plantair.changes")).isNaN();
        assertThat(gauge("plantair.machines.waiting")).isNaN();
    }

    @Test
    void countTheChainAndTheMachinesThatWait() {
        var plant = Plant.in(context);
        var works = plant.site();
        plant.compressor(works, "C-2");
        plant.test(plant.compressor(works), "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        figures.read();

        assertThat(gauge("plantair.changes"))
                .isEqualTo(jdbc.queryForObject("select count(*) from change_record", Double.class))
                .isPositive();
        assertThat(gauge("plantair.machines.waiting")).isZero();

        jdbc.update("delete from machine_state");
        figures.read();

        assertThat(gauge("plantair.machines.waiting"))
                .as("the other was never tested")
                .isEqualTo(1);
    }

    @Test
    void tellTheAgeOfABackupWhereTheProgramMakesThem() {
        if (database.isPostgres()) {
            assertThat(registry.find("plantair.backup.age").gauge()).isNull();
            assertThat(registry.find("plantair.disk.free").gauge()).isNull();
        } else {
            context.getBean(Backups.class).make(BackupKind.BY_HAND);

            assertThat(FixedClock.NOW).isEqualTo(context.getBean(Clock.class).instant());
            assertThat(gauge("plantair.backup.age"))
                    .isEqualTo(Duration.ofHours(3).toSeconds());
            assertThat(gauge("plantair.disk.free"))
                    .as("a database in memory has no disk")
                    .isNaN();
        }
    }
}

@OnH2
final class OperationFiguresOnH2Tests extends OperationFiguresTests {}

@OnPostgres
final class OperationFiguresOnPostgresTests extends OperationFiguresTests {}
