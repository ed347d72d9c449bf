package plantair.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.equipment.Compressor;
import plantair.export.ExportFilter;
import plantair.export.TestFile;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;

/** A log of tests, looked through and taken in. */
abstract class TestLogTests {

    private static final String NAME = "log.csv";
    private static final String HEADER = "test,site,compressor,date,time,tester,receivers,"
            + "start_pressure,start_pressure_unit,stop_pressure,stop_pressure_unit,elapsed,elapsed_unit,"
            + "intake_temperature,intake_temperature_unit,gauge_tag,notes\n";

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TestLog log;

    @Autowired
    private TestFile export;

    @TempDir
    private Path folder;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void plantWithoutTests() {
        database.wipe();
        plant = Plant.in(context);
        var site = plant.site();
        compressor = plant.compressor(site);
        plant.receiver(site);
        plant.gauge("G-1");
    }

    @Test
    void takesInTestsOfSeveralRuns() throws IOException {
        Path file = file(HEADER
                + "a,North works,c-1,2019-03-01,14:30,Ann,R-1,140,psi,172.0,psig,1:00.2,s,70,°F,G-1,\"old, but good\"\n"
                + "a,,,,,,,140,psi,172,psi,60.8,sec,,,,\n"
                + "b,NORTH WORKS,C-1,2019-04-01,,Ann,R-1,9.6,bar,11.8,barg,61,s,21,C,,'=1\n");

        Findings found = log.check(file, NAME, done -> {});
        assertThat(found.problems().first()).isEmpty();
        assertThat(count()).isZero();
        long recorded = log.record(file, NAME, "Zoë", done -> {}, end -> {});

        assertThat(recorded).isEqualTo(2).isEqualTo(found.tests());
        assertThat(found.machines()).containsExactly("North works, C-1");
        assertThat(found.notes().first()).extracting(Remark::column).contains("time");
        assertThat(jdbc.queryForList("select start_pressure from pump_up_run order by test_id, position", String.class))
                .containsExactly("140 [psi]", "140 [psi]", "9.6 bar");
        assertThat(jdbc.queryForList("select elapsed from pump_up_run order by test_id, position", String.class))
                .containsExactly("1:00.2 m:ss", "60.8 s", "61 s");
        assertThat(jdbc.queryForList("select notes from pump_up_test order by id", String.class))
                .containsExactly("old, but good", "=1");
        assertThat(jdbc.queryForList("select recorded_by from pump_up_test", String.class))
                .containsOnly("Zoë");
        assertThat(jdbc.queryForObject("select count(*) from pump_up_result", Long.class))
                .isEqualTo(2);
        assertThat(jdbc.queryForList("select after_text from change_record", String.class))
                .hasSize(2)
                .allMatch(text -> text.startsWith("imported from log.csv, SHA-256 "));
    }

    @Test
    void takesTheSameFileOnce() throws IOException {
        Path file = file(HEADER + row("a", "C-1", "60") + row("b", "C-1", "61"));
        log.record(file, NAME, "Ann", done -> {}, end -> {});

        Findings found = log.check(file, NAME, done -> {});
        long again = log.record(file, NAME, "Ann", done -> {}, end -> {});

        assertThat(found.tests()).isZero();
        assertThat(found.known()).isEqualTo(2);
        assertThat(again).isZero();
        assertThat(count()).isEqualTo(2);
    }

    @Test
    void tellsEachProblemByLineAndColumn() throws IOException {
        assertThat(problems(HEADER + row("a", "C-9", "60"))).isEqualTo("2 compressor import.noCompressor");
        assertThat(problems(HEADER + row("a", "C-1", "60") + row("b", "C-1", "x")))
                .isEqualTo("3 elapsed number.NOT_A_NUMBER");
        assertThat(problems(HEADER + row("a", "C-1", "\"1,5\""))).isEqualTo("2 elapsed number.COMMA");
        assertThat(problems(HEADER + row("a", "C-1", "60").replace("G-1,", "G-1,a,b")))
                .isEqualTo("2  import.noColumn");
        assertThat(problems(HEADER + row("a", "C-1", "60").replace("R-1", "R-9")))
                .isEqualTo("2 receivers import.noReceiver");
        assertThat(problems(HEADER + row("a", "C-1", "60").replace("G-1", "G-9")))
                .isEqualTo("2 gauge_tag test.noSuchInstrument");
        assertThat(problems(HEADER + row("a", "C-1", "60").replace("172", "130")))
                .isEqualTo("2 stop_pressure test.stopNotAboveStart");
        assertThat(problems(HEADER + row("a", "C-1", "60").replace("2019-03-01", "2099-03-01")))
                .isEqualTo("2 date test.future");
        assertThat(problems(HEADER + row("a", "C-1", "60") + row("b", "C-1", "60")))
                .isEqualTo("3  import.twin");
        assertThat(problems(HEADER.replace("tester", "who") + row("a", "C-1", "60")))
                .isEqualTo("1 tester import.columnMissing");
        assertThat(problems(HEADER)).isEqualTo("0  import.nothing");
        assertThat(problems("")).isEqualTo("1  import.noHeader");
        assertThat(problems(HEADER + "\"a,b\n")).endsWith("import.quotes");
        assertThat(count()).isZero();
    }

    @Test
    void takesInNothingWhenOneRowIsWrong() throws IOException {
        Path file = file(HEADER + row("a", "C-1", "60") + row("b", "C-1", "-1"));

        assertThatThrownBy(() -> log.record(file, NAME, "Ann", done -> {}, end -> {}))
                .isInstanceOf(ChangedMeanwhile.class);

        assertThat(count()).isZero();
        assertThat(jdbc.queryForObject("select count(*) from change_record", Long.class))
                .isZero();
    }

    /** The export of tests is a log too: corrections stay corrections, and results come out to the same digits. */
    @Test
    void takesInItsOwnExport() throws IOException {
        var old = plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.9");
        plant.plan(compressor).runs("62.2").notes("'=x").supersede(old, "read 60 for 62");
        String before = exported();
        jdbc.update("delete from pump_up_result");
        for (String table : new String[] {"volume", "rating", "run", "instrument"}) {
            jdbc.update("delete from pump_up_" + table);
        }
        jdbc.update("update pump_up_test set supersedes_id = null, reason = null");
        jdbc.update("delete from pump_up_test");
        plantHasPipe();
        Path file = file(before);

        Findings found = log.check(file, NAME, done -> {});
        log.record(file, NAME, "Ann", done -> {}, end -> {});

        assertThat(found.problems().first()).isEmpty();
        assertThat(found.tests()).isEqualTo(2);
        assertThat(column(exported(), "free_air_m3_per_s")).isEqualTo(column(before, "free_air_m3_per_s"));
        assertThat(column(exported(), "submission")).isEqualTo(column(before, "submission"));
        assertThat(column(exported(), "reason"))
                .isEqualTo(column(before, "reason"))
                .contains("read 60 for 62");
        assertThat(column(exported(), "notes"))
                .isEqualTo(column(before, "notes"))
                .contains("''=x");
    }

    /** Two thousand files that nobody should send, from fixed seeds: problems are told, nothing fails. */
    @Test
    void takesAnythingWithoutFailing() throws IOException {
        plant.plan(compressor).notes("é, \"quoted\"\nline").record();
        plantHasPipe();
        byte[] own = exported().getBytes(StandardCharsets.UTF_8);
        byte[] byHand = (HEADER + row("a", "C-1", "60") + row("b", "C-1", "61") + row("c", "C-1", "62"))
                .replace("\n", "\r\n")
                .getBytes(StandardCharsets.UTF_8);
        int refused = 0;
        for (int seed = 0; seed < 2000; seed++) {
            var random = new Random(seed);
            Path file = folder.resolve("mangled.csv");
            Files.write(file, Mangled.csv(seed % 2 == 0 ? own : byHand, random));
            refused += log.check(file, NAME, done -> {}).problems().isEmpty() ? 0 : 1;
        }

        assertThat(refused).isBetween(500, 1990);
        assertThat(count()).isEqualTo(1);
    }

    private void plantHasPipe() {
        jdbc.update("insert into pipe_piece (site_id, tag, volume, note, in_service, version)"
                + " select id, 'P-1', '2.1 [gal_us]', '', true, 0 from site");
    }

    private static String row(String test, String tag, String elapsed) {
        return test + ",North works," + tag + ",2019-03-01,14:30,Ann,R-1,140,psi,172,psi," + elapsed
                + ",s,70,°F,G-1,\n";
    }

    private String problems(String text) throws IOException {
        StringBuilder told = new StringBuilder();
        for (Remark problem : log.check(file(text), NAME, done -> {}).problems().first()) {
            String[] codes = problem.words().getCodes();
            told.append(told.isEmpty() ? "" : "; ")
                    .append(problem.line() + " " + problem.column() + " " + codes[codes.length - 1]);
        }
        return told.toString();
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve(NAME), text);
    }

    private String exported() throws IOException {
        var out = new StringBuilder();
        export.write(new ExportFilter(0, 0, null, null), out);
        return out.toString();
    }

    private static List<String> column(String csv, String column) {
        List<String> cells = new ArrayList<>();
        new CsvRows(NAME, new Remarks())
                .read(
                        new ByteArrayInputStream(csv.getBytes(StandardCharsets.UTF_8)),
                        row -> cells.add(row.cell(column)));
        return cells;
    }

    private long count() {
        return jdbc.queryForObject("select count(*) from pump_up_test", Long.class);
    }
}

@OnH2
final class TestLogOnH2Tests extends TestLogTests {}

@OnPostgres
final class TestLogOnPostgresTests extends TestLogTests {}
