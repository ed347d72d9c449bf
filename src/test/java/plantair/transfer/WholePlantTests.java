package plantair.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.FileSystemResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.audit.AuditCheck;
import plantair.audit.Fault;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.export.AllFiles;
import plantair.maintenance.EventKind;
import plantair.register.ChainIntake;
import plantair.register.ChangeKind;
import plantair.site.Site;
import plantair.testing.Database;
import plantair.testing.LeakForms;
import plantair.testing.OfferForms;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.SampleFiles;
import plantair.testing.SentFile;
import plantair.testing.SentForm;
import plantair.testing.SentLog;
import plantair.testrecord.ResultProjection;

/** What was exported comes in as it was. */
abstract class WholePlantTests {

    private static final String NAME = "all.zip";

    @Autowired
    private ApplicationContext context;

    @Autowired
    private ChainIntake chain;

    @Autowired
    private AuditCheck audit;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Database database;

    @Autowired
    private DataSource dataSource;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ResultProjection projection;

    @Autowired
    private AllFiles export;

    @Autowired
    private WholePlant plant;

    @Autowired
    private MockMvcTester site;

    @TempDir
    private Path folder;

    @BeforeEach
    void empty() {
        database.wipe();
    }

    /** All files are the same, but for one line in the change log for each site, that says where it came from. */
    @Test
    void givesTheSameExportAfterwards() throws IOException {
        new ResourceDatabasePopulator(false, false, "UTF-8", new FileSystemResource("db/demo/R__demo_plant.sql"))
                .execute(dataSource);
        projection.fill(done -> {});
        workAndDecisions();
        var recorded = EnumSet.complementOf(EnumSet.of(ChangeKind.ACCOUNT));
        transaction.executeWithoutResult(status -> chain.takeIn(recorded, "Ann", "there before"));
        Path zip = exported();
        Map<String, String> before = files(zip);
        long sites = count("site");
        database.wipe();

        Findings found = plant.check(zip, NAME, done -> {});
        assertThat(found.problems().first()).isEmpty();
        assertThat(count("site") + count("change_record") + count("pump_up_result"))
                .isZero();
        long tests = plant.record(zip, NAME, "Zoë", done -> {}, end -> {});

        Map<String, String> after = files(exported());
        String changes = after.remove("changes.csv");
        String changesBefore = before.remove("changes.csv");
        assertThat(tests)
                .isEqualTo(found.tests())
                .isEqualTo(count("pump_up_test"))
                .isGreaterThan(100);
        assertThat(before.keySet()).hasSize(46);
        String photos = before.keySet().stream()
                .filter(name -> name.startsWith("files/"))
                .map(name -> name.substring(name.length() - 4))
                .sorted()
                .toList()
                .toString();
        assertThat(photos).isEqualTo("[.jpg, .png, .txt]");
        before.forEach((name, text) -> assertThat(text.lines().count()).as(name).isGreaterThan(1));
        assertThat(after).isEqualTo(before);
        assertThat(audit.check(read -> {}).faults())
                .as("all but the accounts of this test, of which no line tells")
                .extracting(Fault::record)
                .containsExactly("ACCOUNT 1", "ACCOUNT 2", "ACCOUNT 3", "ACCOUNT 4");
        assertThat(changes).startsWith(changesBefore);
        assertThat(changes.substring(changesBefore.length()).lines())
                .hasSize((int) sites)
                .allMatch(line -> line.contains(",Zoë,SITE,")
                        && line.matches(".*imported with all its records from all.zip, SHA-256 [0-9a-f]{64}\",import"));
    }

    /** Typed text that a spreadsheet would run, apostrophes, new lines: each comes back as it was typed. */
    @Test
    void bringsBackWhatWasTyped() throws IOException {
        Plant typed = Plant.in(context);
        var compressor = typed.compressor(typed.site("'=Ünï;\"q\",", "America/Chicago"), "=1+1");
        typed.plan(compressor).by("''@Ann").notes("=1\n'=2\r\nx").record();
        Path zip = exported();
        database.wipe();

        plant.record(zip, NAME, "Ann", done -> {}, end -> {});

        assertThat(jdbc.queryForObject("select notes from pump_up_test", String.class))
                .isEqualTo("=1\n'=2\r\nx");
        assertThat(jdbc.queryForObject("select tester from pump_up_test", String.class))
                .isEqualTo("''@Ann");
        assertThat(jdbc.queryForObject("select tag from compressor", String.class))
                .isEqualTo("=1+1");
        assertThat(jdbc.queryForObject("select name from site", String.class)).isEqualTo("'=Ünï;\"q\",");
    }

    @Test
    void countsOnAfterTheNumbersInTheFile() throws IOException {
        Plant first = Plant.in(context);
        first.compressor(first.site("A", "UTC"));
        first.site("B", "UTC");
        Path zip = exported();
        database.wipe();
        plant.record(zip, NAME, "Ann", done -> {}, end -> {});

        Site next = Plant.in(context).site("C", "UTC");

        assertThat(next.id()).isEqualTo(3);
    }

    @Test
    void refusesAPlantThatHasRecords() throws IOException {
        Plant.in(context).site();
        Path zip = exported();

        Findings found = plant.check(zip, NAME, done -> {});

        assertThat(found.problems().first())
                .singleElement()
                .satisfies(problem -> assertThat(problem.words().getCodes()).containsExactly("import.notEmpty"));
        assertThatThrownBy(() -> plant.record(zip, NAME, "Ann", done -> {}, end -> {}))
                .isInstanceOf(ChangedMeanwhile.class);
    }

    @Test
    void tellsLineAndColumnOfWhatCannotBe() throws IOException {
        Plant one = Plant.in(context);
        one.test(one.compressor(one.site()), "2026-01-05T14:00:00Z", "60");
        Path zip = exported();
        database.wipe();

        assertThat(problem(zip, "compressors.csv", "PISTON", "STEAM")).isEqualTo("compressors.csv 2 kind import.cell");
        assertThat(problem(zip, "sites.csv", "America/Chicago", "Mars")).isEqualTo("sites.csv 2 zone import.cell");
        assertThat(problem(zip, "sites.csv", "site_id", "id")).isEqualTo("sites.csv 1 site_id import.columnMissing");
        assertThat(problem(zip, "tests.csv", ",140.0,", ",x,")).isEqualTo("tests.csv 2 start_pressure import.cell");
        assertThat(problem(zip, "tests.csv", ",140.0,", ",190.0,")).isEqualTo("tests.csv 0  import.impossibleTest");
        assertThat(problem(zip, "compressors.csv", "\r\n1,1,", "\r\n1,7,"))
                .isEqualTo("compressors.csv 2  import.refused");
        assertThat(problem(zip, "compressors.csv", "Two-stage", "x".repeat(200)))
                .isEqualTo("compressors.csv 2  import.refused");
        assertThat(count("site")).isZero();
    }

    @Test
    void refusesRecordsThatContradictThemselves() throws IOException {
        Plant.in(context).site();
        assertThat(LeakForms.twoReadings().post(site).status()).isEqualTo(302);
        assertThat(OfferForms.OFFER.post(site).status()).isEqualTo(302);
        Path zip = exported();
        database.wipe();

        assertThat(plant.check(zip, NAME, done -> {}).problems().first()).isEmpty();
        assertThat(problem(zip, "leak_readings.csv", ",5,min", ",0,min"))
                .isEqualTo("leak_tests.csv 0  import.impossibleRecord");
        assertThat(problem(zip, "offers.csv", ",18,kW", ",0,kW")).isEqualTo("offers.csv 0  import.impossibleRecord");
    }

    /** Fixed seeds; what comes is a list of problems or nothing wrong, never an exception. */
    @Test
    void takesAnythingWithoutFailing() throws IOException {
        Plant one = Plant.in(context);
        one.test(one.compressor(one.site()), "2026-01-05T14:00:00Z", "60", "61");
        byte[] whole = Files.readAllBytes(exported());
        Map<String, String> good = files(exported());
        database.wipe();
        int refused = 0;
        for (int seed = 0; seed < 200; seed++) {
            var random = new Random(seed);
            Path file = folder.resolve("mangled.zip");
            if (seed % 4 == 0) {
                Files.write(file, Mangled.bytes(whole, random));
            } else {
                Map<String, byte[]> files = new LinkedHashMap<>();
                good.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
                String name = good.keySet().stream()
                        .skip(random.nextInt(good.size()))
                        .findFirst()
                        .orElseThrow();
                files.put(name, Mangled.csv(files.get(name), random));
                zip(file, files);
            }
            refused += plant.check(file, NAME, done -> {}).problems().isEmpty() ? 0 : 1;
        }

        assertThat(refused).isGreaterThan(100);
        assertThat(count("site") + count("change_record")).isZero();
    }

    /** What the demo plant may lack. */
    private void workAndDecisions() {
        Compressor machine = context.getBean(Compressors.class)
                .findByIdIn(List.of(jdbc.queryForObject("select min(id) from compressor", Long.class)))
                .get(0);
        Plant.in(context).event(machine, LocalDate.parse("2024-05-01"), EventKind.BELT, true, "new\nbelt");
        jdbc.update("insert into baseline_choice (submission, compressor_id, test_id, reason, chosen_at, chosen_by)"
                + " select submission, compressor_id, id, 'after repair', recorded_at, 'Ann' from pump_up_test"
                + " where id = (select min(id) from pump_up_test)");
        jdbc.update("update site set currency = 'EUR', tariff = '25 %' where id = (select min(id) from site)");
        jdbc.update("insert into test_review (submission, test_id, reviewed_at, reviewed_by, note)"
                + " select submission, id, recorded_at, 'Bo', '' from pump_up_test"
                + " where id = (select max(id) from pump_up_test)");
        attach("COMPRESSOR/1", SampleFiles.jpeg());
        attach("SITE/1", SampleFiles.jpeg());
        attach("RECEIVER/1", SampleFiles.picture("png", 900, 700, 5));
        assertThat(SentForm.to("/attachments/2/withdraw")
                        .with("submission", "00000000-0000-0000-0000-000000000007")
                        .with("reason", "=not this one")
                        .post(site)
                        .status())
                .isEqualTo(302);
        jdbc.update("insert into logged_run_withdrawal (logged_run_id, submission, withdrawn_at, withdrawn_by, reason)"
                + " select id, submission, recorded_at, 'Bo', 'another fill' from logged_run");
        jdbc.update("insert into machine_readings (submission, compressor_id, test_id, read_at, zone, reader, hours,"
                + " oil_level, noise, recorded_at, recorded_by) select submission, compressor_id, id, performed_at, zone,"
                + " tester, '12034 h', 'LOW', '=knock', recorded_at, 'Ann' from pump_up_test"
                + " where id = (select max(id) from pump_up_test)");
        jdbc.update("delete from plant_limits");
        jdbc.update("insert into plant_limits (site_id, watch_below, plan_below, act_below, version)"
                + " select min(id), 96, 91, 81, 3 from site");
    }

    private void attach(String to, byte[] bytes) {
        assertThat(SentFile.of(to, "=1+1.bin", bytes, "plate").send(site).status())
                .isEqualTo(302);
    }

    /** The bytes are looked at like any upload: another file under the name of a photo does not come in. */
    @Test
    void refusesPhotosThatAreMissingOrOthers() throws IOException {
        Plant.in(context).compressor(Plant.in(context).site());
        attach("COMPRESSOR/1", SampleFiles.jpeg());
        Path zip = exported();
        String photo = files(zip).keySet().stream()
                .filter(name -> name.startsWith("files/"))
                .findFirst()
                .orElseThrow();
        database.wipe();

        assertThat(problem(zip, photo, "JFIF", "JFIX")).isEqualTo("attachments.csv 0 sha256 import.attached.broken");
        assertThat(problem(zip, "attachments.csv", photo.substring(6, 12), "abcdef"))
                .isEqualTo("attachments.csv 0 sha256 import.attached.missing");
        assertThat(problem(zip, "attachments.csv", "JPEG", "EXE ")).isEqualTo("attachments.csv 2 format import.cell");
        assertThat(count("attachment") + count("attachment_content")).isZero();
    }

    /** The readings come back out of the file, as they were and where its columns say. */
    @Test
    void refusesLogsThatAreMissingOrOthers() throws IOException {
        Plant one = Plant.in(context);
        one.test(one.compressor(one.site()), "2026-01-05T14:00:00Z", "60");
        assertThat(SentLog.of(1, "fill.csv", SentLog.rise())
                        .columns(site)
                        .post(site)
                        .status())
                .isEqualTo(302);
        Path zip = exported();
        String log = files(zip).keySet().stream()
                .filter(name -> name.startsWith("files/"))
                .findFirst()
                .orElseThrow();
        database.wipe();

        assertThat(files(zip).get("logged_readings.csv"))
                .contains("\r\n1,2,0,40.0,0.0,275790.29")
                .hasLineCount(152);
        assertThat(problem(zip, log, "Pressure", "Pleasure"))
                .isEqualTo("logged_runs.csv 0 sha256 import.attached.broken");
        assertThat(problem(zip, "logged_runs.csv", log.substring(6, 12), "abcdef"))
                .isEqualTo("logged_runs.csv 0 sha256 import.attached.missing");
        assertThat(problem(zip, "logged_runs.csv", "[psi]", "[gal_us]"))
                .isEqualTo("logged_runs.csv 2 pressure_unit import.cell");
        plant.record(zip, NAME, "Ann", done -> {}, end -> {});
        assertThat(files(exported()).get("logged_readings.csv"))
                .isEqualTo(files(zip).get("logged_readings.csv"));
    }

    private String problem(Path zip, String name, String old, String other) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files(zip).forEach((file, text) -> files.put(file, bytes(file, text)));
        String text = files(zip).get(name);
        assertThat(text).contains(old);
        files.put(name, bytes(name, text.replace(old, other)));
        Path changed = folder.resolve("changed.zip");
        zip(changed, files);
        Remark first = plant.check(changed, NAME, done -> {}).problems().first().get(0);
        String[] codes = first.words().getCodes();
        return first.file() + " " + first.line() + " " + first.column() + " " + codes[codes.length - 1];
    }

    private static byte[] bytes(String name, String text) {
        return text.getBytes(name.startsWith("files/") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
    }

    private Path exported() throws IOException {
        var out = new ByteArrayOutputStream();
        export.write(out);
        return Files.write(folder.resolve("export.zip"), out.toByteArray());
    }

    private static Map<String, String> files(Path zip) throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (var in = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(zip)))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                boolean bytes = entry.getName().startsWith("files/");
                files.put(
                        entry.getName(),
                        new String(in.readAllBytes(), bytes ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private static void zip(Path file, Map<String, byte[]> files) throws IOException {
        try (var out = new ZipOutputStream(Files.newOutputStream(file))) {
            for (var one : files.entrySet()) {
                out.putNextEntry(new ZipEntry(one.getKey()));
                out.write(one.getValue());
            }
        }
    }

    private long count(String table) {
        return jdbc.queryForObject("select count(*) from " + table, Long.class);
    }
}

@OnH2
final class WholePlantOnH2Tests extends WholePlantTests {}

@OnPostgres
final class WholePlantOnPostgresTests extends WholePlantTests {}
