package plantair.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import jakarta.persistence.EntityManagerFactory;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.hibernate.SessionFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressor;
import plantair.equipment.Control;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.pumpup.StaticHold;
import plantair.pumpup.Uncertainty;
import plantair.quantity.Entered;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.TestChecks;

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
    void writesInstrumentsAsTheRegisterHadThem() throws IOException {
        var copies = List.of(
                new InstrumentCopy(
                        InstrumentKind.GAUGE,
                        plant.gauge("G-1").id(),
                        "=G-1",
                        Entered.parse("200 [psi]"),
                        Entered.parse("1 %"),
                        Entered.parse("2 [psi]"),
                        null,
                        LocalDate.parse("2025-12-31"),
                        CalibrationStatus.OVERDUE),
                new InstrumentCopy(
                        InstrumentKind.TIMER,
                        plant.gauge("T-1").id(),
                        "T-1",
                        null,
                        null,
                        null,
                        Entered.parse("0.2 s"),
                        null,
                        CalibrationStatus.NO_CERTIFICATE));
        plant.plan(compressor).with(copies, "none other here").record();

        CSVRecord row = rows(ALL).get(0);

        assertThat(row.get("gauge_tag")).isEqualTo("'=G-1");
        assertThat(row.get("gauge_due")).isEqualTo("2025-12-31");
        assertThat(row.get("gauge_status")).isEqualTo("OVERDUE");
        assertThat(row.get("timer_tag")).isEqualTo("T-1");
        assertThat(row.get("timer_due")).isEmpty();
        assertThat(row.get("barometer_tag")).isEmpty();
        assertThat(row.get("instrument_limits"))
                .isEqualTo("GAUGE =G-1: span 200 [psi], limit 1 %, division 2 [psi]; TIMER T-1: limit 0.2 s");
        assertThat(row.get("override_reason")).isEqualTo("none other here");
    }

    /** Power and flow: 550 ft·lbf/s a mechanical horsepower, 1728 in³ a cubic foot (NIST SP 811, from memory). */
    @Test
    void writesWhatWasCheckedAsTypedAndInSi() throws IOException {
        plant.plan(compressor)
                .checks(new TestChecks(
                        Entered.parse("172.0 [psi]"),
                        Entered.parse("165.0 [psi]"),
                        Entered.parse("5:00 m:ss"),
                        StaticHold.Place.TEST_VOLUME,
                        true,
                        null,
                        null,
                        Entered.parse("460 V"),
                        Entered.parse("12.4 A"),
                        Entered.parse("85 %"),
                        null,
                        Entered.parse("10 [HP]"),
                        3,
                        Entered.parse("45.0 [cft_i]/min"),
                        Control.START_STOP))
                .record();

        CSVRecord row = rows(ALL).get(0);

        assertThat(row.get("hold_start")).isEqualTo("172.0");
        assertThat(row.get("hold_start_unit")).isEqualTo("[psi]");
        assertThat(row.get("hold_wait")).isEqualTo("5:00");
        assertThat(row.get("hold_wait_s")).isEqualTo("300.0");
        assertThat(row.get("hold_place")).isEqualTo("TEST_VOLUME");
        assertThat(row.get("leak_added")).isEqualTo("true");
        assertThat(value(row, "leak_at_hold_m3_per_s")).isGreaterThan(value(row, "leak_in_runs_m3_per_s"));
        assertThat(row.get("leak_at_hold_basis")).isEqualTo("INTAKE");
        assertThat(row.get("others_off")).isEqualTo("true");
        assertThat(row.get("speed_held")).isEmpty();
        assertThat(row.get("input_power")).isEmpty();
        assertThat(row.get("motor_current")).isEqualTo("12.4");
        assertThat(row.get("motor_current_unit")).isEqualTo("A");
        assertThat(value(row, "motor_power_w"))
                .isCloseTo(10 * 550 * 0.3048 * 0.45359237 * 9.80665, withinPercentage(1e-6));
        assertThat(row.get("displacement")).isEqualTo("45.0");
        assertThat(value(row, "displacement_m3_per_s"))
                .isCloseTo(45 * StrictMath.pow(0.3048, 3) / 60, withinPercentage(1e-10));
        assertThat(row.get("joins_trend")).isEqualTo("false");
        assertThat(row.get("findings")).contains("LEAK_ADDED");
    }

    /** Volumetric efficiency is delivery over displacement; isentropic, least power over √3 U I cos φ. */
    @Test
    void writesVerdictAndEfficiencies() throws IOException {
        plant.plan(compressor)
                .checks(new TestChecks(
                        null,
                        null,
                        null,
                        null,
                        true,
                        null,
                        null,
                        Entered.parse("460 V"),
                        Entered.parse("12.4 A"),
                        Entered.parse("85 %"),
                        Entered.parse("90 %"),
                        Entered.parse("10 [HP]"),
                        3,
                        Entered.parse("45.0 [cft_i]/min"),
                        Control.START_STOP))
                .record();

        CSVRecord row = rows(ALL).get(0);
        double shaft = StrictMath.sqrt(3) * 460 * 12.4 * 0.85 * 0.9;

        assertThat(value(row, "volumetric_efficiency"))
                .isCloseTo(
                        value(row, "free_air_m3_per_s") / value(row, "displacement_m3_per_s"), withinPercentage(1e-10));
        assertThat(value(row, "shaft_power_w")).isCloseTo(shaft, withinPercentage(1e-10));
        assertThat(row.get("shaft_power_from_plate")).isEqualTo("false");
        assertThat(value(row, "isentropic_efficiency"))
                .isCloseTo(value(row, "least_power_w") / shaft, withinPercentage(1e-10));
        assertThat(row.get("verdict")).isEqualTo("CANNOT_BE_TOLD");
        assertThat(row.get("verdict_tolerance")).isEqualTo("0.06");
        assertThat(value(row, "verdict_probability")).isBetween(0.05, 0.95);
        assertThat(row.get("joins_trend")).isEqualTo("true");
    }

    /** Independent parts add as squares (GUM 5.1.2). */
    @Test
    void writesEveryPartOfTheUncertainty() throws IOException {
        plant.plan(compressor).with(plant.gauge("G-1")).record();

        CSVRecord row = rows(ALL).get(0);
        double squares = Stream.of(Uncertainty.Source.values())
                .map(source -> row.get("u_" + source.name().toLowerCase(Locale.ROOT)))
                .filter(cell -> !cell.isEmpty())
                .mapToDouble(cell -> Double.parseDouble(cell) * Double.parseDouble(cell))
                .sum();

        assertThat(StrictMath.sqrt(squares)).isCloseTo(value(row, "relative_u_combined"), withinPercentage(1e-10));
        assertThat(row.get("u_gauge_span")).isNotEmpty();
        assertThat(row.get("u_gauge_unknown")).isEmpty();
    }

    @Test
    void writesWhatARestatedTestWasBefore() throws IOException {
        Instrument gauge = plant.gauge("G-1");
        plant.plan(compressor).with(gauge).record();
        String recorded = rows(ALL).get(0).get("free_air_m3_per_s");
        assertThat(rows(ALL).get(0).get("as_recorded_free_air_m3_per_s")).isEmpty();
        long calibration =
                plant.restate(gauge, LocalDate.parse("2026-03-01"), "K-7").id();

        CSVRecord row = rows(ALL).get(0);

        assertThat(row.get("as_recorded_free_air_m3_per_s")).isEqualTo(recorded);
        assertThat(value(row, "free_air_m3_per_s")).isLessThan(Double.parseDouble(recorded));
        assertThat(row.get("restated_by")).isEqualTo(String.valueOf(calibration));
        assertThat(row.get("restated_by_certificate")).isEqualTo("K-7");
        assertThat(row.get("stop_pressure")).isEqualTo("172.0");
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
        Instrument gauge = plant.gauge("G-1");
        for (int i = 0; i < 250; i++) {
            plant.plan(compressor).with(gauge).record();
        }
        plant.restate(gauge, LocalDate.parse("2026-03-01"), "K-7");
        var statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();

        List<CSVRecord> rows = rows(ALL);
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);

        assertThat(rows).hasSize(750);
        assertThat(statements).isLessThanOrEqualTo(3 * 12);
    }

    private static double value(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
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
