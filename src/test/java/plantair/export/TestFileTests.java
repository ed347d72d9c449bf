package plantair.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import jakarta.persistence.EntityManagerFactory;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.hibernate.SessionFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressor;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;

/** What was typed comes back from the file as it was typed. */
abstract class TestFileTests {

    private static final ExportFilter ALL = new ExportFilter(0, 0, null, null);

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private TestFile file;

    @Autowired
    private EntityManagerFactory entities;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void emptyPlant() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
    }

    @Test
    void writesOneRowARunWithItsReadingsAsTyped() throws IOException {
        plant.plan(compressor)
                .runs("1:00.20", "60.80", "60.5")
                .band("140.0 [psi]", "172.0 [psi]")
                .record();

        List<CSVRecord> rows = rows(ALL);

        assertThat(rows).hasSize(3);
        assertThat(rows).extracting(row -> row.get("run")).containsExactly("1", "2", "3");
        assertThat(rows).extracting(row -> row.get("elapsed")).containsExactly("1:00.20", "60.80", "60.5");
        assertThat(rows).extracting(row -> row.get("elapsed_unit")).containsExactly("m:ss", "s", "s");
        assertThat(rows).extracting(row -> row.get("elapsed_s")).containsExactly("60.2", "60.8", "60.5");
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.get("start_pressure")).isEqualTo("140.0");
            assertThat(row.get("start_pressure_unit")).isEqualTo("[psi]");
            assertThat(row.get("performed_at")).isEqualTo("2026-01-05T08:00:00-06:00");
            assertThat(row.get("zone")).isEqualTo("America/Chicago");
            assertThat(row.get("free_air_basis")).isEqualTo("INTAKE");
            assertThat(row.get("settled_pressure")).isEmpty();
            assertThat(row.get("superseded_by")).isEmpty();
            assertThat(row.get("volumes"))
                    .isEqualTo("RECEIVER R-1: 120 [gal_us], MAWP 200 [psi]; PIPE P-1: 2.1 [gal_us]");
            assertThat(row.get("ratings")).isEqualTo("35 [cft_i]/min at 175 [psi] gauge, INTAKE");
        });
    }

    /** 231 in³ a US gallon, 0.45359237 kg × 9.80665 m/s² on a square inch (NIST SP 811, from memory). */
    @Test
    void writesSiNumbersWithoutPowersOfTen() throws IOException {
        plant.plan(compressor).record();

        List<String> cells = rows(ALL).stream().flatMap(CSVRecord::stream).toList();
        CSVRecord row = rows(ALL).get(0);

        assertThat(Double.parseDouble(row.get("net_volume_m3")))
                .isCloseTo(122.1 * 231 * 0.0254 * 0.0254 * 0.0254, withinPercentage(1e-10));
        assertThat(Double.parseDouble(row.get("start_pressure_pa")))
                .isCloseTo(140 * 0.45359237 * 9.80665 / (0.0254 * 0.0254), withinPercentage(1e-10));
        assertThat(cells).noneMatch(cell -> cell.matches("-?[\\d.]+E-?\\d+"));
    }

    @Test
    void keepsAccentsQuotesAndLinesOfANote() throws IOException {
        String note = "pression \"basse\", é ß 圧縮\nsecond line; ok";
        plant.plan(compressor).by("Zoë Łuk").notes(note).record();

        CSVRecord row = rows(ALL).get(0);

        assertThat(row.get("notes")).isEqualTo(note);
        assertThat(row.get("tester")).isEqualTo("Zoë Łuk");
    }

    @Test
    void putsAnApostropheBeforeTextThatASpreadsheetWouldRun() throws IOException {
        plant.plan(compressor)
                .by("@Ann")
                .notes("=1+1\n\"quoted\"")
                .receiverTag("=R")
                .record();

        CSVRecord row = rows(ALL).get(0);

        assertThat(row.get("notes")).isEqualTo("'=1+1\n\"quoted\"");
        assertThat(row.get("tester")).isEqualTo("'@Ann");
        assertThat(row.get("volumes")).startsWith("RECEIVER =R");
    }

    @Test
    void leavesNumbersBelowZeroAsTheyAre() throws IOException {
        plant.plan(compressor).band("-1.5 [psi]", "30 [psi]").record();

        CSVRecord row = rows(ALL).get(0);

        assertThat(row.get("start_pressure")).isEqualTo("-1.5");
        assertThat(row.get("start_pressure_pa")).startsWith("-10342.");
    }

    @Test
    void endsLinesAsRfc4180Wants() throws IOException {
        plant.plan(compressor).record();
        var out = new StringBuilder();

        file.write(ALL, out);

        assertThat(out.toString()).endsWith("\r\n").startsWith("test_id,run,site,");
        assertThat(out.toString().split("\r\n")).hasSize(4);
    }

    @Test
    void tellsWhichTestCorrectsWhich() throws IOException {
        var old = plant.test(compressor, "2026-01-05T14:00:00Z", "60.2");
        var corrected = plant.plan(compressor).runs("62.2").supersede(old, "read 60 for 62");

        List<CSVRecord> rows = rows(ALL);

        assertThat(rows.get(0).get("superseded_by")).isEqualTo(String.valueOf(corrected.id()));
        assertThat(rows.get(0).get("supersedes")).isEmpty();
        assertThat(rows.get(1).get("supersedes")).isEqualTo(String.valueOf(old.id()));
        assertThat(rows.get(1).get("reason")).isEqualTo("read 60 for 62");
    }

    @Test
    void writesTestsWithoutAverageToo() throws IOException {
        plant.test(compressor, "2026-01-05T14:00:00Z", "50", "60", "70");

        CSVRecord row = rows(ALL).get(0);

        assertThat(row.get("free_air_m3_per_s")).isEmpty();
        assertThat(row.get("free_air_basis")).isEmpty();
        assertThat(row.get("run_free_air_m3_per_s")).isNotEmpty();
        assertThat(row.get("findings")).startsWith("RUNS_DRIFT");
    }

    @Test
    void choosesBySiteMachineAndDayWhereTheTestWasMade() throws IOException {
        var other = plant.compressor(plant.site("Île", "Pacific/Auckland"), "C-1");
        plant.test(compressor, "2026-03-02T04:00:00Z", "60"); // 1 March in Chicago
        plant.test(other, "2026-03-01T20:00:00Z", "60"); // 2 March in Auckland
        LocalDate first = LocalDate.parse("2026-03-01");
        LocalDate second = LocalDate.parse("2026-03-02");

        assertThat(rows(ALL)).hasSize(2);
        assertThat(rows(new ExportFilter(0, 0, first, first)))
                .extracting(row -> row.get("test_id"))
                .containsExactly("1");
        assertThat(rows(new ExportFilter(0, 0, second, null)))
                .extracting(row -> row.get("test_id"))
                .containsExactly("2");
        assertThat(rows(new ExportFilter(other.site().id(), 0, null, null)))
                .extracting(row -> row.get("site"))
                .containsExactly("Île");
        assertThat(rows(new ExportFilter(0, compressor.id(), null, null))).hasSize(1);
        assertThat(rows(new ExportFilter(0, 999, null, null))).isEmpty();
    }

    @Test
    void asksTheDatabaseAFewTimesAHundredTests() throws IOException {
        for (int i = 0; i < 250; i++) {
            plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        }
        var statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();

        List<CSVRecord> rows = rows(ALL);
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);

        assertThat(rows).hasSize(750);
        assertThat(statements).isLessThanOrEqualTo(3 * 9);
    }

    private List<CSVRecord> rows(ExportFilter filter) throws IOException {
        var out = new StringBuilder();
        file.write(filter, out);
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(out.toString()))
                .getRecords();
    }
}

@OnH2
final class TestFileOnH2Tests extends TestFileTests {}

@OnPostgres
final class TestFileOnPostgresTests extends TestFileTests {}
