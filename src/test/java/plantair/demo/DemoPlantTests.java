package plantair.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.FileSystemResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import plantair.demo.Occasion.Trouble;
import plantair.equipment.Compressors;
import plantair.equipment.Receivers;
import plantair.equipment.VesselHazard;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.FindingCode;
import plantair.site.Sites;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.StoredResult;
import plantair.testrecord.StoredResults;
import plantair.trend.Direction;
import plantair.trend.OutputLine;
import plantair.trend.OutputPoint;

/** The demo plant as the application sees it, and the method against the truth of the simulation. */
abstract class DemoPlantTests {

    private static final List<DemoTest> TRUTH = DemoPlant.tests();

    @Autowired
    private Database database;

    @Autowired
    private DataSource dataSource;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ResultProjection projection;

    @Autowired
    private StoredResults results;

    @Autowired
    private PumpUpTests tests;

    @Autowired
    private Sites sites;

    @Autowired
    private Compressors compressors;

    @Autowired
    private Receivers receivers;

    @BeforeEach
    void load() {
        database.wipe();
        loadFile();
        projection.fill();
    }

    @AfterEach
    void wipe() {
        database.wipe();
    }

    @Test
    void holdsWhatTheGeneratorMakes() throws IOException {
        assertThat(Files.readString(DemoPlantSql.FILE).lines())
                .containsExactlyElementsOf(DemoPlantSql.text().lines().toList());
    }

    @Test
    void hasAResultForEveryTest() {
        assertThat(sites.count()).isEqualTo(2);
        assertThat(compressors.count()).isEqualTo(5);
        assertThat(receivers.count()).isEqualTo(7);
        assertThat(tests.count()).isEqualTo(TRUTH.size()).isGreaterThan(125);
        assertThat(results.count()).isEqualTo(TRUTH.size());
    }

    @Test
    void addsNothingToAPlantThatIsNotEmpty() {
        jdbc.update("update site set note = 'changed by somebody'");
        var before = jdbc.queryForList("select count(*) from change_record", Long.class);

        loadFile();

        assertThat(tests.count()).isEqualTo(TRUTH.size());
        assertThat(jdbc.queryForList("select count(*) from change_record", Long.class))
                .isEqualTo(before);
        assertThat(jdbc.queryForList("select distinct note from site", String.class))
                .containsExactly("changed by somebody");
    }

    @Test
    void leavesTheNextIdsFree() {
        jdbc.update("insert into site (name, zone, elevation, note, version) values ('new', 'UTC', '1 m', '', 0)");

        assertThat(jdbc.queryForObject("select id from site where name = 'new'", Long.class))
                .isEqualTo(3);
    }

    @Test
    void showsWearAsFalling() {
        assertThat(line("C-02", day -> true).direction()).isEqualTo(Direction.FALLING);
    }

    @Test
    void showsTheRepair() {
        double early = mean("C-01", day -> day.isBefore(LocalDate.of(2021, 12, 1)));
        double late = mean("C-01", day -> day.isAfter(LocalDate.of(2022, 10, 1)) && day.isBefore(Machines.REPAIR));
        double repaired = mean("C-01", day -> day.isAfter(Machines.REPAIR));

        assertThat(late / early).isBetween(0.75, 0.9);
        assertThat(repaired / early).isBetween(0.94, 1.03);
    }

    @Test
    void showsTheStepOfTheNewGauge() {
        double before = mean("C-03", day -> day.isBefore(Machines.NEW_GAUGE) && day.getYear() != 2021);
        double after = mean("C-03", day -> !day.isBefore(Machines.NEW_GAUGE));

        assertThat(after / before).isBetween(0.91, 0.97);
    }

    @Test
    void doesNotAverageTheColdStart() {
        StoredResult cold = only(Trouble.COLD_START);

        assertThat(cold.freeAir()).isEmpty();
        assertThat(projection.result(cold).findings()).anyMatch(finding -> finding.code() == FindingCode.RUNS_DRIFT);
    }

    @Test
    void averagesEveryOtherTest() {
        assertThat(TRUTH)
                .filteredOn(test -> test.trouble() != Trouble.COLD_START)
                .allMatch(test -> result(test).freeAir().isPresent());
    }

    @Test
    void supersedesTheWetTest() {
        StoredResult wet = only(Trouble.WATER);
        var correction = tests.findBySupersedesId(wet.testId()).orElseThrow();
        StoredResult dry = resultOf(correction.id());

        assertThat(wet.isCurrent()).isFalse();
        assertThat(wet.ratingRatio().orElseThrow()).isGreaterThan(1.05);
        assertThat(correction.reason()).isEqualTo("water drained");
        assertThat(dry.isCurrent()).isTrue();
        assertThat(dry.ratingRatio().orElseThrow()).isBetween(0.85, 1.0);
        assertThat(jdbc.queryForList("select after_text from change_record where kind = 'TEST'", String.class))
                .containsExactly("superseded by test " + correction.id());
    }

    @Test
    void showsLowOutputWhereTheValveLeaked() {
        double usual = mean("C-03", day -> day.isBefore(Machines.NEW_GAUGE) && day.getYear() != 2021);

        assertThat(flow(only(Trouble.LEAKING_VALVE)) / usual).isBetween(0.8, 0.93);
    }

    @Test
    void hasVesselsNobodyShouldStandBeside() {
        LocalDate today = LocalDate.of(2026, 6, 15);

        assertThat(hazards("R-03", today)).containsExactly(VesselHazard.CERTIFICATE_EXPIRED);
        assertThat(hazards("R-11", today)).containsExactly(VesselHazard.RELIEF_ABOVE_MAWP);
        assertThat(hazards("R-01", today)).isEmpty();
    }

    /** 95 % of honest tests must lie within twice their stated uncertainty of the simulated truth. */
    @Test
    void findsTheTrueFlowWithinItsUncertainty() {
        List<DemoTest> honest = TRUTH.stream()
                .filter(test -> test.draft().conditions().airTemperature() != AirTemperature.NOT_MEASURED)
                .filter(test -> test.trouble() == Trouble.NONE)
                .toList();
        long within = honest.stream().filter(test -> Math.abs(score(test)) <= 2).count();

        assertThat(within).isGreaterThanOrEqualTo(Math.round(0.95 * honest.size()));
        assertThat(honest).hasSizeGreaterThan(100);
    }

    private double score(DemoTest test) {
        StoredResult result = result(test);
        double u = StrictMath.hypot(result.relativeRandom(), result.relativeShared());
        return (result.freeAir().orElseThrow().cubicMetresPerSecond() / test.trueFlow() - 1) / u;
    }

    private void loadFile() {
        new ResourceDatabasePopulator(false, false, "UTF-8", new FileSystemResource(DemoPlantSql.FILE))
                .execute(dataSource);
    }

    private Set<VesselHazard> hazards(String tag, LocalDate today) {
        long site = sites.findByFactsNameIgnoreCase(tag.startsWith("R-0") ? Registers.GULL : Registers.MESA)
                .orElseThrow()
                .id();
        return receivers
                .findBySiteIdAndFactsTagIgnoreCase(site, tag)
                .orElseThrow()
                .facts()
                .hazards(today);
    }

    private StoredResult only(Trouble trouble) {
        return result(TRUTH.stream()
                .filter(test -> test.trouble() == trouble)
                .findFirst()
                .orElseThrow());
    }

    private StoredResult result(DemoTest test) {
        return resultOf(
                tests.findBySubmission(test.draft().submission()).orElseThrow().id());
    }

    private StoredResult resultOf(long testId) {
        return results.findByKeyTestIdAndKeyMethodVersion(testId, "PU-1").orElseThrow();
    }

    private List<StoredResult> current(String tag, Predicate<LocalDate> days) {
        Long id = jdbc.queryForObject("select id from compressor where tag = ?", Long.class, tag);
        return results.findByCompressorIdAndCurrentRecordTrueOrderByPerformedAtAscKeyTestIdAsc(id).stream()
                .filter(result -> result.comparable().isPresent() && days.test(day(result)))
                .toList();
    }

    private OutputLine line(String tag, Predicate<LocalDate> days) {
        return OutputLine.of(current(tag, days).stream()
                .map(result -> new OutputPoint(day(result), result.comparable().orElseThrow(), result.relativeRandom()))
                .toList());
    }

    private double mean(String tag, Predicate<LocalDate> days) {
        return current(tag, days).stream()
                .mapToDouble(DemoPlantTests::flow)
                .average()
                .orElseThrow();
    }

    private static double flow(StoredResult result) {
        return result.comparable().orElseThrow().cubicMetresPerSecond();
    }

    private static LocalDate day(StoredResult result) {
        return result.performedAt().atZone(ZoneOffset.UTC).toLocalDate();
    }
}

@OnH2
final class DemoPlantOnH2Tests extends DemoPlantTests {}

@OnPostgres
final class DemoPlantOnPostgresTests extends DemoPlantTests {}
