package plantair.maintenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFollower;
import plantair.equipment.Compressors;
import plantair.register.Changes;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Which maintenance events count. */
abstract class MaintenanceEventsTests {

    private static final LocalDate SPRING = LocalDate.of(2025, 3, 1);
    private static final LocalDate AUTUMN = LocalDate.of(2025, 9, 1);

    @Autowired
    private MaintenanceEvents events;

    @Autowired
    private RecordEvent record;

    @Autowired
    private Compressors compressors;

    @Autowired
    private Changes changes;

    @Autowired
    private Clock clock;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private ApplicationContext context;

    private Plant plant;
    private Compressor machine;
    private Compressor other;

    @BeforeEach
    void startWithTwoMachines() {
        database.wipe();
        plant = Plant.in(context);
        var site = plant.site();
        machine = plant.compressor(site, "C-1");
        other = plant.compressor(site, "C-2");
    }

    @Test
    void givesWhatCountsByMachineAndDate() {
        var autumn = plant.event(machine, AUTUMN, EventKind.VALVES, true, "new plates");
        var elsewhere = plant.event(other, SPRING, EventKind.DRAIN, false, "");
        var spring = plant.event(machine, SPRING, EventKind.BELT, true, "");

        assertThat(ids(events.findCurrent(machine.id()))).containsExactly(spring.id(), autumn.id());
        assertThat(ids(events.findCurrentOfAll(List.of(other.id(), machine.id()))))
                .containsExactly(spring.id(), autumn.id(), elsewhere.id());
        assertThat(events.findCurrentOfAll(List.of())).isEmpty();
    }

    @Test
    void keepsWhatWasRecorded() {
        plant.event(machine, SPRING, EventKind.OTHER, true, "new cooler");

        MaintenanceEvent read = events.findCurrent(machine.id()).get(0);

        assertThat(read.draft(UUID.randomUUID()))
                .usingRecursiveComparison()
                .ignoringFields("submission")
                .isEqualTo(draft(SPRING, EventKind.OTHER, true, "new cooler"));
        assertThat(read.recordedAt()).isEqualTo(clock.instant());
        assertThat(read.recordedBy()).isEqualTo("Ann");
    }

    @Test
    void recordsAFormSentTwiceOnce() {
        EventDraft draft = draft(SPRING, EventKind.BELT, true, "");

        assertThat(record.record(draft, "Ann").id())
                .isEqualTo(record.record(draft, "Ann").id());
        assertThat(events.findCurrent(machine.id())).hasSize(1);
    }

    @Test
    void recordsAFormSentManyTimesAtOnceOnce() throws InterruptedException, ExecutionException {
        EventDraft draft = draft(SPRING, EventKind.BELT, true, "");
        var threads = Executors.newFixedThreadPool(4);
        List<Callable<Long>> clicks = new ArrayList<>();
        for (int click = 0; click < 8; click++) {
            clicks.add(() -> record.record(draft, "Ann").id());
        }

        List<Future<Long>> answers = threads.invokeAll(clicks);
        threads.shutdown();

        long only = events.findCurrent(machine.id()).get(0).id();
        for (Future<Long> answer : answers) {
            assertThat(answer.get()).isEqualTo(only);
        }
    }

    @Test
    void countsACorrectionInPlaceOfTheCorrected() {
        MaintenanceEvent wrong = plant.event(machine, AUTUMN, EventKind.FILTER, false, "");
        MaintenanceEvent right = record.supersede(wrong, draft(SPRING, EventKind.VALVES, true, "x"), "misread", "Bo");

        assertThat(ids(events.findCurrent(machine.id()))).containsExactly(right.id());
        assertThat(right.supersedesId()).isEqualTo(wrong.id());
        assertThat(right.reason()).isEqualTo("misread");
        assertThat(changes.count()).isEqualTo(1);
        assertThatThrownBy(() -> record.supersede(wrong, draft(SPRING, EventKind.BELT, true, ""), "again", "Bo"))
                .isInstanceOf(StaleRecord.class);
        assertThatThrownBy(() -> record.withdraw(wrong, UUID.randomUUID(), "again", "Bo"))
                .isInstanceOf(StaleRecord.class);
        assertThat(changes.count()).isEqualTo(1);
    }

    @Test
    void countsAWithdrawnEventNoMoreUntilTheWithdrawalIsCorrected() {
        MaintenanceEvent event = plant.event(machine, SPRING, EventKind.BELT, true, "");
        UUID submission = UUID.randomUUID();
        MaintenanceEvent withdrawal = record.withdraw(event, submission, "it was C-2", "Bo");

        assertThat(record.withdraw(event, submission, "it was C-2", "Bo").id()).isEqualTo(withdrawal.id());
        assertThat(events.findCurrent(machine.id())).isEmpty();
        assertThat(withdrawal.isWithdrawn()).isTrue();
        assertThat(withdrawal.happenedOn()).isEqualTo(SPRING);
        assertThat(changes.count()).isEqualTo(1);
        assertThatThrownBy(() -> record.withdraw(withdrawal, UUID.randomUUID(), "twice", "Bo"))
                .isInstanceOf(StaleRecord.class);

        var again = record.supersede(withdrawal, draft(SPRING, EventKind.BELT, true, ""), "it was C-1", "Bo");
        assertThat(ids(events.findCurrent(machine.id()))).containsExactly(again.id());
    }

    @Test
    void keepsACorrectionToItsMachine() {
        MaintenanceEvent event = plant.event(other, SPRING, EventKind.BELT, true, "");

        assertThatThrownBy(() -> record.supersede(event, draft(SPRING, EventKind.BELT, true, ""), "slip", "Bo"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> record.record(
                        new EventDraft(UUID.randomUUID(), 99, SPRING, EventKind.BELT, true, "", ""), "Bo"))
                .isInstanceOf(NoSuchRecord.class);
    }

    @Test
    void tellsFollowersInTheSameTransaction() {
        List<Long> told = new ArrayList<>();
        RecordEvent followed = followedBy(told::add);
        EventDraft draft = draft(SPRING, EventKind.BELT, true, "");

        MaintenanceEvent event = transaction.execute(status -> followed.record(draft, "Ann"));
        transaction.execute(status -> followed.record(draft, "Ann"));
        transaction.execute(status -> followed.withdraw(event, UUID.randomUUID(), "slip", "Ann"));

        assertThat(told).containsExactly(machine.id(), machine.id());

        RecordEvent failing = followedBy(id -> {
            throw new IllegalStateException("cannot follow " + id);
        });
        assertThatThrownBy(() ->
                        transaction.execute(status -> failing.record(draft(AUTUMN, EventKind.BELT, true, ""), "Ann")))
                .isInstanceOf(IllegalStateException.class);
        assertThat(events.findCurrent(machine.id())).isEmpty();
    }

    @Test
    void refusesInTheDatabaseWhatNoEventCanSay() {
        plant.event(machine, SPRING, EventKind.BELT, true, "");

        assertThatThrownBy(() -> jdbc.update("update maintenance_event set kind = 'SPOON'"))
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThatThrownBy(() -> jdbc.update("update maintenance_event set kind = 'OTHER'"))
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThatThrownBy(() -> jdbc.update("update maintenance_event set withdrawn = true"))
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThatThrownBy(() -> jdbc.update("update maintenance_event set reason = 'none'"))
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void takesEveryKind() {
        for (EventKind kind : EventKind.values()) {
            plant.event(machine, SPRING, kind, kind.mayChangeOutput(), "note");
        }

        assertThat(events.findCurrent(machine.id()))
                .filteredOn(MaintenanceEvent::mayStep)
                .extracting(MaintenanceEvent::kind)
                .containsExactly(EventKind.BELT, EventKind.VALVES, EventKind.RINGS, EventKind.AIREND);
    }

    private RecordEvent followedBy(CompressorFollower follower) {
        var followers = new StaticListableBeanFactory(Map.of("follower", follower));
        return new RecordEvent(
                events, compressors, changes, clock, followers.getBeanProvider(CompressorFollower.class));
    }

    private EventDraft draft(LocalDate day, EventKind kind, boolean mayStep, String note) {
        return new EventDraft(UUID.randomUUID(), machine.id(), day, kind, mayStep, "Ann", note);
    }

    private static List<Long> ids(List<MaintenanceEvent> some) {
        return some.stream().map(MaintenanceEvent::id).toList();
    }
}

@OnH2
final class MaintenanceEventsOnH2Tests extends MaintenanceEventsTests {}

@OnPostgres
final class MaintenanceEventsOnPostgresTests extends MaintenanceEventsTests {}
