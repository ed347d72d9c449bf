package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static plantair.audit.Fault.Code.CHAIN_BROKEN;
import static plantair.audit.Fault.Code.END_MOVED;
import static plantair.audit.Fault.Code.LINE_ALTERED;
import static plantair.audit.Fault.Code.LINE_NOT_LINKED;
import static plantair.audit.Fault.Code.RECORD_ALTERED;
import static plantair.audit.Fault.Code.RECORD_MISSING;
import static plantair.audit.Fault.Code.RECORD_WITHOUT_LINE;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** What the check finds. Almost every test takes back what it did, so that the next one meets the same plant. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class AuditCheckTests {

    /** Not sealed: the chain itself, what is derived, who signed in and is signed in. Every other table is. */
    private static final Set<String> UNSEALED = Set.of(
            "change_record",
            "chain_end",
            "attachment_content", // AttachedBytesCheckTests
            "attachment_piece",
            "pump_up_result",
            "machine_state",
            "test_draft",
            "shared_file",
            "shared_piece",
            "import_job",
            "audit_run",
            "set_up_code",
            "waiting_log",
            "account_event",
            "calendar_feed",
            "spring_session",
            "spring_session_attributes");

    /** Tables of the records: kind, and the column that tells the record. */
    private static final Map<String, Sealed> SEALED = new TreeMap<>(Map.ofEntries(
            Map.entry("site", new Sealed(ChangeKind.SITE, "id")),
            Map.entry("compressor", new Sealed(ChangeKind.COMPRESSOR, "id")),
            Map.entry("rating_point", new Sealed(ChangeKind.COMPRESSOR, "compressor_id")),
            Map.entry("receiver", new Sealed(ChangeKind.RECEIVER, "id")),
            Map.entry("pipe_piece", new Sealed(ChangeKind.PIPE, "id")),
            Map.entry("instrument", new Sealed(ChangeKind.INSTRUMENT, "id")),
            Map.entry("calibration", new Sealed(ChangeKind.CALIBRATION, "id")),
            Map.entry("calibration_point", new Sealed(ChangeKind.CALIBRATION, "calibration_id")),
            Map.entry("pump_up_test", new Sealed(ChangeKind.TEST, "id")),
            Map.entry("pump_up_volume", new Sealed(ChangeKind.TEST, "test_id")),
            Map.entry("pump_up_rating", new Sealed(ChangeKind.TEST, "test_id")),
            Map.entry("pump_up_run", new Sealed(ChangeKind.TEST, "test_id")),
            Map.entry("pump_up_instrument", new Sealed(ChangeKind.TEST, "test_id")),
            Map.entry("gauge_restatement", new Sealed(ChangeKind.RESTATEMENT, "id")),
            Map.entry("gauge_restatement_test", new Sealed(ChangeKind.RESTATEMENT, "restatement_id")),
            Map.entry("machine_readings", new Sealed(ChangeKind.READINGS, "id")),
            Map.entry("maintenance_event", new Sealed(ChangeKind.EVENT, "id")),
            Map.entry("baseline_choice", new Sealed(ChangeKind.BASELINE, "id")),
            Map.entry("plant_limits", new Sealed(ChangeKind.LIMITS, "site_id")),
            Map.entry("test_review", new Sealed(ChangeKind.REVIEW, "id")),
            Map.entry("attachment", new Sealed(ChangeKind.ATTACHMENT, "id")),
            Map.entry("attachment_withdrawal", new Sealed(ChangeKind.ATTACHMENT, "attachment_id")),
            Map.entry("logged_run", new Sealed(ChangeKind.LOGGED_RUN, "id")),
            Map.entry("logged_run_withdrawal", new Sealed(ChangeKind.LOGGED_RUN, "logged_run_id")),
            Map.entry("relief_valve", new Sealed(ChangeKind.VALVE, "id")),
            Map.entry("valve_test", new Sealed(ChangeKind.VALVE_TEST, "id")),
            Map.entry("vessel_certificate", new Sealed(ChangeKind.CERTIFICATE, "id")),
            Map.entry("vessel_inspection", new Sealed(ChangeKind.INSPECTION, "id")),
            Map.entry("wall_reading", new Sealed(ChangeKind.INSPECTION, "inspection_id")),
            Map.entry("vessel_finding", new Sealed(ChangeKind.FINDING, "id")),
            Map.entry("demand_item", new Sealed(ChangeKind.DEMAND_ITEM, "id")),
            Map.entry("supply_choice", new Sealed(ChangeKind.SUPPLY_CHOICE, "id")),
            Map.entry("supply_standby", new Sealed(ChangeKind.SUPPLY_CHOICE, "choice_id")),
            Map.entry("leak_test", new Sealed(ChangeKind.LEAK_TEST, "id")),
            Map.entry("leak_cycle", new Sealed(ChangeKind.LEAK_TEST, "test_id")),
            Map.entry("leak_machine", new Sealed(ChangeKind.LEAK_TEST, "test_id")),
            Map.entry("leak_reading", new Sealed(ChangeKind.LEAK_TEST, "test_id")),
            Map.entry("leak_volume", new Sealed(ChangeKind.LEAK_TEST, "test_id")),
            Map.entry("found_leak", new Sealed(ChangeKind.FOUND_LEAK, "id")),
            Map.entry("found_leak_step", new Sealed(ChangeKind.FOUND_LEAK, "leak_id")),
            Map.entry("due_interval", new Sealed(ChangeKind.INTERVAL, "id")),
            Map.entry("offer", new Sealed(ChangeKind.OFFER, "id")),
            Map.entry("account", new Sealed(ChangeKind.ACCOUNT, "id"))));

    /** No form of theirs yet: these rows are put in by hand, and their lines with them. */
    private static final Map<ChangeKind, String> BY_HAND = Map.of(
            ChangeKind.BASELINE,
            "insert into baseline_choice (submission, compressor_id, test_id, reason, chosen_at, chosen_by) values"
                    + " ('00000000-0000-0000-0000-000000000009', 1, 1, 'repaired', '2026-06-01 00:00:00+00', 'Ann')",
            ChangeKind.READINGS,
            "insert into machine_readings (submission, compressor_id, read_at, zone, reader, hours, noise, recorded_at,"
                    + " recorded_by) values ('00000000-0000-0000-0000-000000000008', 1, '2026-06-01 00:00:00+00', 'UTC',"
                    + " 'Ann', '12034 h', '', '2026-06-01 00:00:00+00', 'Ann')",
            ChangeKind.LIMITS,
            "insert into plant_limits (site_id, watch_below, plan_below, act_below, version) values (1, 95, 90, 85, 0)");

    /** Columns that no single other value fits: keys that rows refer to or share, and what a gauge or a pipe piece cannot have. */
    private static final Set<String> REFUSED = Set.of(
            "attachment.sha256",
            "calibration.id",
            "compressor.id",
            "found_leak.id",
            "found_leak_step.leak_id",
            "gauge_restatement.id",
            "gauge_restatement_test.restatement_id",
            "instrument.accuracy",
            "instrument.grade_percent",
            "instrument.kind",
            "leak_cycle.test_id",
            "leak_machine.measured_test_id",
            "leak_machine.test_id",
            "leak_reading.test_id",
            "leak_test.id",
            "leak_test.reason",
            "leak_test.supersedes_id",
            "leak_test.withdrawn",
            "leak_volume.test_id",
            "logged_run.id",
            "logged_run.sha256",
            "machine_readings.reason",
            "machine_readings.supersedes_id",
            "pipe_piece.bore",
            "pipe_piece.length",
            "pump_up_instrument.test_id",
            "pump_up_rating.test_id",
            "pump_up_run.test_id",
            "pump_up_test.id",
            "pump_up_volume.test_id",
            "rating_point.compressor_id",
            "receiver.id",
            "relief_valve.id",
            "demand_item.edge",
            "demand_item.stated",
            "supply_choice.id",
            "supply_choice.leaks_from",
            "supply_standby.choice_id",
            "vessel_inspection.id",
            "wall_reading.inspection_id");

    /** Columns that change without a line of their own: an account's password, and how often its sessions were ended. */
    private static final Set<String> OMITTED =
            Set.of("account.password_hash", "account.must_change_password", "account.epoch", "account.version");

    private record Sealed(ChangeKind kind, String owner) {}

    @Autowired
    private AuditCheck check;

    /** The part of the check that compares records with their lines, a kind at a time. */
    @Autowired
    private RecordCheck records;

    @Autowired
    private Changes changes;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    private PlantedFaults<AuditReport> planted;

    /** Lines of the plant as it was recorded; none before the first time. */
    private long recorded;

    @BeforeEach
    void recordSomethingOfEveryKind() {
        if (recorded > 0 && changes.count() == recorded) {
            return;
        }
        database.wipe();
        database.recordPeople();
        AuditedPlant.record(site);
        BY_HAND.forEach((kind, sql) -> transaction.executeWithoutResult(status -> {
            jdbc.update(sql);
            changes.save(Lines.about(kind, 1));
        }));
        planted = new PlantedFaults<>(jdbc, transaction, this::report);
        recorded = changes.count();
    }

    private AuditReport report() {
        return check.check(read -> {});
    }

    private List<Fault> faultsOf(ChangeKind kind) {
        var faults = new Faults();
        records.compare(kind, faults, read -> {});
        return faults.first();
    }

    private AuditReport after(String... statements) {
        return planted.after(statements).orElseThrow();
    }

    @Test
    void findsASoundPlantSound() {
        AuditReport report = report();

        assertThat(report.faults()).isEmpty();
        assertThat(report.isSound()).isTrue();
        assertThat(report.lines()).isEqualTo(changes.count()).isGreaterThan(18);
        assertThat(report.records() + report.lines()).isEqualTo(check.size());
        assertThat(report.end()).isEqualTo(changes.end().orElseThrow().digest());
    }

    @Test
    void findsAPlantWithNothingButAccountsSound() {
        database.wipe();
        database.recordPeople();

        AuditReport report = report();

        assertThat(report.faults()).isEmpty();
        assertThat(List.of(report.lines(), report.records())).containsExactly(4L, 4L);
    }

    /** Sessions end and passwords change without a new digest of the account; whoever sets a hash by hand is not found. */
    @Test
    void looksAtNoPasswordAndNoSession() {
        for (String column : OMITTED) {
            String name = column.substring("account.".length());
            boolean took = planted.alterColumn(
                    "account",
                    "id = 1",
                    name,
                    report -> assertThat(report.faults()).isEmpty());
            assertThat(took).as(column).isTrue();
        }
    }

    @Test
    void hasALineForEveryKind() {
        List<String> kinds = jdbc.queryForList("select distinct kind from change_record", String.class);

        assertThat(kinds)
                .containsExactlyInAnyOrderElementsOf(
                        EnumSet.allOf(ChangeKind.class).stream().map(Enum::name).toList());
    }

    @Test
    void addsALineAtEachEdit() {
        List<SentForm> edits = List.of(
                PlantForms.SITE.at("/sites/1").with("elevation", "601", "[ft_i]"),
                PlantForms.COMPRESSOR.at("/compressors/1").with("note", "new belt"),
                PlantForms.RECEIVER.at("/receivers/1").with("note", "painted"),
                PlantForms.PIPE.at("/pipes/1").with("volume", "2.2", "[gal_us]"),
                PlantForms.GAUGE.at("/instruments/1").with("note", "dropped"));
        for (SentForm edit : edits) {
            long before = changes.count();
            AuditedPlant.send(site, edit.with("edit.reason", "seen").with("edit.version", "0"));
            assertThat(changes.count()).as(edit.address()).isEqualTo(before + 1);
            assertThat(report().faults()).isEmpty();
        }
    }

    @Test
    void knowsOfEveryTableWhetherItIsSealed() {
        Set<String> known = new TreeSet<>(SEALED.keySet());
        known.addAll(UNSEALED);

        assertThat(known).containsExactlyElementsOf(new TreeSet<>(database.tables()));
    }

    /** Every column of every sealed table; a few cannot be altered, because others refer to them or go with them. */
    @Test
    void findsEveryAlteredColumnAndNamesTheRecord() {
        List<String> refused = new ArrayList<>();
        int tried = 0;
        for (var table : SEALED.entrySet()) {
            Sealed sealed = table.getValue();
            Long id = jdbc.queryForObject("select max(" + sealed.owner + ") from " + table.getKey(), Long.class);
            String row = row(table.getKey(), sealed.owner, id);
            var ofKind = new PlantedFaults<>(jdbc, transaction, () -> faultsOf(sealed.kind));
            Set<String> left = ofKind.alterEachColumn(
                    table.getKey(),
                    row,
                    column -> !OMITTED.contains(table.getKey() + "." + column),
                    faults -> assertThat(faults)
                            .as(table.getKey() + " of " + row)
                            .anySatisfy(fault -> {
                                assertThat(fault.record()).isEqualTo(sealed.kind + " " + id);
                                assertThat(fault.code()).isIn(RECORD_ALTERED, RECORD_MISSING);
                            }));
            tried += planted.columns(table.getKey()).size() - left.size();
            left.forEach(column -> refused.add(table.getKey() + "." + column));
        }
        assertThat(refused).isSubsetOf(REFUSED);
        assertThat(tried).isGreaterThan(170);
    }

    private String row(String table, String owner, Long id) {
        String second = Map.ofEntries(
                        Map.entry("rating_point", "position"),
                        Map.entry("calibration_point", "position"),
                        Map.entry("leak_cycle", "position"),
                        Map.entry("leak_machine", "position"),
                        Map.entry("leak_reading", "position"),
                        Map.entry("leak_volume", "position"),
                        Map.entry("pump_up_volume", "position"),
                        Map.entry("pump_up_rating", "position"),
                        Map.entry("pump_up_run", "position"),
                        Map.entry("pump_up_instrument", "position"),
                        Map.entry("gauge_restatement_test", "test_id"),
                        Map.entry("wall_reading", "position"),
                        Map.entry("supply_standby", "compressor_id"))
                .getOrDefault(table, "");
        String first = owner + " = " + id;
        return second.isEmpty()
                ? first
                : first + " and " + second + " = (select min(" + second + ") from " + table + " where " + first + ")";
    }

    @Test
    void findsATakenRecord() {
        AuditReport report = after(
                "delete from test_review",
                "delete from pump_up_result where test_id = 3",
                "delete from pump_up_volume where test_id = 3",
                "delete from pump_up_rating where test_id = 3",
                "delete from pump_up_run where test_id = 3",
                "delete from pump_up_instrument where test_id = 3",
                "delete from pump_up_test where id = 3");

        assertThat(report.faults())
                .extracting(fault -> fault.code() + " " + fault.record())
                .containsExactlyInAnyOrder("RECORD_MISSING TEST 3", "RECORD_MISSING REVIEW 1");
        assertThat(after("delete from pump_up_run where test_id = 2 and position = 1")
                        .faults())
                .extracting(Fault::code, Fault::record)
                .containsExactly(tuple(RECORD_ALTERED, "TEST 2"));
    }

    @Test
    void findsARecordPutInBeside() {
        String insert =
                "insert into site (id, name, zone, elevation, note, version) values (%d, 'x', 'UTC', '1 m', '', 0)";

        for (long id : new long[] {77, 0, -5, Long.MAX_VALUE, Long.MIN_VALUE}) {
            assertThat(after(insert.formatted(id)).faults())
                    .containsExactly(new Fault(RECORD_WITHOUT_LINE, 0, "SITE " + id));
        }
        assertThat(after("insert into gauge_restatement_test (restatement_id, test_id) values (1, 3)")
                        .faults())
                .extracting(Fault::record)
                .containsExactly("RESTATEMENT 1");
    }

    /** The id only counts the rows: no page and no check reads it. */
    @Test
    void findsEveryAlteredColumnOfALine() {
        assertThat(planted.columns("change_record")).hasSize(13).containsKey("id");

        for (String column : planted.columns("change_record").keySet()) {
            if (!column.equals("id")) {
                boolean took = planted.alterColumn(
                        "change_record",
                        "chain_number = 12",
                        column,
                        report -> assertThat(report.faults())
                                .extracting(Fault::code)
                                .containsAnyOf(LINE_ALTERED, CHAIN_BROKEN));
                assertThat(took).as(column).isTrue();
            }
        }
    }

    @Test
    void findsALineTakenOutOrMoved() {
        assertThat(after("delete from change_record where chain_number = 12").faults())
                .contains(new Fault(CHAIN_BROKEN, 13, ""));
        assertThat(after(
                                "update change_record set chain_number = 9999 where chain_number = 12",
                                "update change_record set chain_number = 12 where chain_number = 13",
                                "update change_record set chain_number = 13 where chain_number = 9999")
                        .faults())
                .extracting(fault -> fault.code() + " " + fault.line())
                .contains(
                        "CHAIN_BROKEN 12", "LINE_ALTERED 12", "CHAIN_BROKEN 13", "LINE_ALTERED 13", "CHAIN_BROKEN 14");
    }

    @Test
    void findsALineTakenOffTheEnd() {
        long last = changes.count();
        String cut = "delete from change_record where chain_number = " + last;

        assertThat(after(cut).faults()).contains(new Fault(END_MOVED, last - 1, ""));
        // the end moved with it: only the record is left to tell, or a digest kept elsewhere
        assertThat(after(
                                cut,
                                "update chain_end set chain_number = chain_number - 1, digest = (select digest from change_record"
                                        + " where chain_number = " + (last - 1) + ")")
                        .faults())
                .extracting(Fault::code)
                .containsExactly(RECORD_WITHOUT_LINE);
    }

    @Test
    void findsALineThatIsNoLink() {
        String line =
                "insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason,"
                        + " chain_number) values ('2026-01-01 00:00:00+00', 'Eve', 'SITE', 1, 'x', 'x', 'x', %s)";

        for (String number : List.of("null", "0", "-7")) {
            assertThat(after(line.formatted(number)).faults()).containsExactly(new Fault(LINE_NOT_LINKED, 0, "SITE 1"));
        }
    }

    @Test
    void findsAnEndThatIsGoneOrNotBegun() {
        assertThat(after("delete from chain_end").faults())
                .extracting(Fault::code)
                .containsExactly(END_MOVED);
        assertThat(after("update chain_end set begun = false").faults())
                .extracting(Fault::code)
                .containsExactly(END_MOVED);
    }

    @Test
    void countsMoreFaultsThanItKeeps() {
        AuditReport report = after("update change_record set reason = 'x'", "update pump_up_run set elapsed = '1 s'");

        assertThat(report.faultCount()).isEqualTo(changes.count() + 4);
        assertThat(report.isSound()).isFalse();
    }
}

@OnH2
final class AuditCheckOnH2Tests extends AuditCheckTests {}

@OnPostgres
final class AuditCheckOnPostgresTests extends AuditCheckTests {}
