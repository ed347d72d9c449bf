package plantair.upgrade;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plantair.audit.AuditCheck;
import plantair.history.MachineStates;
import plantair.testing.Client;
import plantair.testrecord.ResultProjection;

/**
 * The plants of earlier programs, each opened by that of today as an upgrade does: the newer migrations run, the whole
 * application starts, old records come into the chain. Nothing is lost, and results come out as they did.
 */
abstract class ArchivedPlantTests {

    /** Derived, or of the program's own book-keeping. */
    private static final Set<String> DERIVED = Set.of(
            "flyway_schema_history",
            "chain_end",
            "machine_state",
            StoredResults.TABLE,
            "shedlock",
            "spring_session",
            "spring_session_attributes");

    /** To these a start adds: it takes old records into the chain, and the demo opens its accounts and signs in. */
    private static final Set<String> GROWS = Set.of("change_record", "account", "account_event");

    /** The demo plant gets new passwords at each start. */
    private static final Set<String> OF_PASSWORDS = Set.of("password_hash", "must_change_password", "epoch", "version");

    /** V9 makes lines of these kinds name the record and no longer its machine; register.OldLinesTests. */
    private static final Set<String> NAMED_ANEW = Set.of("BASELINE", "EVENT");

    private static final int CHAIN = 9;

    /** The archive in the database of this class, and where it is. */
    abstract TodaysProgram.Place place(Archive archive, Connection original) throws SQLException;

    void opensWithAllItsRecordsAndResults(Archive archive) throws SQLException {
        try (Connection original = archive.open()) {
            try {
                open(archive, original);
            } finally {
                archive.forget(original);
            }
        }
    }

    private void open(Archive archive, Connection original) throws SQLException {
        Map<String, List<String>> columns = Snapshot.columns(original);
        Snapshot then = Snapshot.of(original, columns);
        var results = new StoredResults(archive, then);
        try (TodaysProgram program = TodaysProgram.startOn(place(archive, original));
                Connection now = program.connection()) {
            Snapshot opened = Snapshot.of(now, columns);
            keepsEveryRecord(archive, then, opened);
            results.areIn(opened);
            answers(program.visitor(), now);

            program.part(ResultProjection.class).rebuild(done -> {});
            program.part(MachineStates.class).rebuild(done -> {});
            results.areIn(Snapshot.of(now, columns));
            isSound(program.part(AuditCheck.class));
        }
    }

    private static void keepsEveryRecord(Archive archive, Snapshot then, Snapshot now) {
        for (String table : then.tables().keySet()) {
            List<String> before = records(archive, table, then);
            List<String> after = records(archive, table, now);
            if (GROWS.contains(table)) {
                assertThat(after).as(table).containsAll(before);
            } else if (!DERIVED.contains(table)) {
                assertThat(after).as(table).isEqualTo(before);
            }
        }
    }

    private static List<String> records(Archive archive, String table, Snapshot snapshot) {
        List<String> records = new ArrayList<>();
        for (Map<String, String> row : snapshot.rows(table)) {
            if (table.equals("account")) {
                row.keySet().removeAll(OF_PASSWORDS);
            }
            if (table.equals("change_record") && archive.step() < CHAIN && NAMED_ANEW.contains(row.get("kind"))) {
                row.remove("object_id");
            }
            records.add(row.toString());
        }
        return records.stream().sorted().toList();
    }

    private static void answers(Client visitor, Connection now) throws SQLException {
        List<String> pages = new ArrayList<>(List.of("/", "/tests", "/due", "/export"));
        try (var statement = now.createStatement();
                var state = statement.executeQuery("select compressor_id, last_test_id from machine_state")) {
            while (state.next()) {
                pages.add("/compressors/" + state.getLong(1));
                pages.add("/tests/" + state.getLong(2));
            }
        }
        assertThat(pages).as("machines have a state").hasSizeGreaterThan(10);
        pages.forEach(visitor::page);
        assertThat(visitor.file("/export/all.zip").statusCode()).isEqualTo(200);
    }

    private static void isSound(AuditCheck check) {
        var report = check.check(read -> {});
        assertThat(report.faults()).isEmpty();
        assertThat(report.records()).isGreaterThan(100);
    }
}

final class ArchivedPlantOnH2Tests extends ArchivedPlantTests {

    @ParameterizedTest
    @MethodSource("plantair.upgrade.Archive#onH2")
    void opens(Archive archive) throws SQLException {
        opensWithAllItsRecordsAndResults(archive);
    }

    @Override
    TodaysProgram.Place place(Archive archive, Connection original) {
        return archive.place();
    }
}

final class ArchivedPlantOnPostgresTests extends ArchivedPlantTests {

    @ParameterizedTest
    @MethodSource("plantair.upgrade.Archive#onPostgres")
    void opens(Archive archive) throws SQLException {
        opensWithAllItsRecordsAndResults(archive);
    }

    @AfterAll
    static void leaveTheServerAsItWas() throws SQLException {
        PostgresCopy.drop();
    }

    @Override
    TodaysProgram.Place place(Archive archive, Connection original) throws SQLException {
        return PostgresCopy.of(archive, original);
    }
}
