package plantair.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.Pageable;
import plantair.demo.Occasion.Trouble;
import plantair.equipment.Compressors;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.equipment.VesselHazard;
import plantair.equipment.VesselStop;
import plantair.equipment.VesselStops;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.Calibrations;
import plantair.instrument.Instruments;
import plantair.pumpup.FindingCode;
import plantair.site.Sites;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testrecord.StoredResult;
import plantair.trend.OutputPoint;
import plantair.trend.OutputTrend;
import plantair.vessel.VesselFiles;
import plantair.wall.WallCode;
import plantair.wall.WallPlace;

/** The stories of the demo plant as the application sees them. */
abstract class DemoPlantTests extends LoadedDemoPlant {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);

    @Autowired
    private Sites sites;

    @Autowired
    private Compressors compressors;

    @Autowired
    private Receivers receivers;

    @Autowired
    private VesselStops stops;

    @Autowired
    private VesselFiles files;

    @Autowired
    private Instruments instruments;

    @Autowired
    private Calibrations calibrations;

    @Test
    void holdsWhatTheGeneratorMakes() throws IOException {
        assertThat(Files.readString(DemoPlantSql.FILE).lines())
                .containsExactlyElementsOf(DemoPlantSql.text().lines().toList());
    }

    @Test
    void hasAResultForEveryTest() {
        assertThat(sites.count()).isEqualTo(2);
        assertThat(compressors.count()).isEqualTo(6);
        assertThat(receivers.count()).isEqualTo(8);
        assertThat(tests.count()).isEqualTo(TRUTH.size()).isGreaterThan(165);
        assertThat(results.count()).isEqualTo(TRUTH.size());
    }

    @Test
    void keepsReadingsAsTyped() {
        DemoTest first = TRUTH.get(0);
        var stored =
                tests.findBySubmission(first.draft().submission()).orElseThrow().id();

        assertThat(jdbc.queryForList(
                        "select elapsed from pump_up_run where test_id = ? order by position", String.class, stored))
                .containsExactlyElementsOf(first.draft().runs().stream()
                        .map(run -> run.elapsed().text())
                        .toList());
        assertThat(jdbc.queryForList("select elapsed from pump_up_run", String.class))
                .anyMatch(text -> text.matches("\\d+\\.\\d s"))
                .anyMatch(text -> text.matches("\\d:\\d\\d\\.\\d m:ss"));
    }

    @Test
    void showsWearAsFalling() {
        var line = OutputTrend.of(
                current("C-02", day -> true).stream()
                        .map(result -> new OutputPoint(
                                day(result), result.comparable().orElseThrow(), result.relativeRandom()))
                        .toList(),
                List.of());

        assertThat(line.code().isDecline()).isTrue();
    }

    @Test
    void showsTheRepair() {
        double early = mean("C-01", day -> day.isBefore(LocalDate.of(2021, 12, 1)));
        double late = mean("C-01", day -> day.isAfter(LocalDate.of(2022, 10, 1)) && day.isBefore(Machines.REPAIR));
        double repaired = mean("C-01", day -> day.isAfter(Machines.REPAIR));

        assertThat(late / early).isBetween(0.75, 0.9);
        assertThat(repaired / early).isBetween(0.95, 1.02);
    }

    @Test
    void averagesAllButTheColdStart() {
        StoredResult cold = only(Trouble.COLD_START);

        assertThat(cold.freeAir()).isEmpty();
        assertThat(projection.result(cold).findings()).anyMatch(finding -> finding.code() == FindingCode.RUNS_DRIFT);
        assertThat(TRUTH)
                .filteredOn(test -> result(test).freeAir().isEmpty())
                .extracting(DemoTest::trouble)
                .containsExactly(Trouble.COLD_START);
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
    void tellsNoPartOfARatingOfUnknownBasis() {
        assertThat(current("C-03", day -> true))
                .allMatch(result -> result.ratingRatio().isEmpty());
    }

    @Test
    void hasVesselsNobodyShouldStandBeside() {
        assertThat(hazards(Registers.GULL, "R-03")).containsExactly(VesselHazard.CERTIFICATE_EXPIRED);
        assertThat(hazards(Registers.MESA, "R-11")).containsExactly(VesselHazard.RELIEF_ABOVE_MAWP);
        assertThat(hazards(Registers.GULL, "R-01")).isEmpty();
    }

    @Test
    void hasAWallThatThinsAndOneThatReadsThicker() {
        long wet = receivers
                .findBySiteIdAndFactsTagIgnoreCase(siteId(Registers.GULL), "R-02")
                .orElseThrow()
                .id();
        Receiver receiver = receivers.findWithSiteById(wet).orElseThrow();
        var wall = files.of(List.of(wet)).get(wet).wall(receiver.facts());

        assertThat(wall).hasSize(8);
        assertThat(wall.get("bottom, drain end").code()).isEqualTo(WallCode.THINNING);
        assertThat(wall.get("top, inlet end").code()).isEqualTo(WallCode.NO_LOSS_TOLD);
        assertThat(wall.get("outlet head, above").code()).isEqualTo(WallCode.THICKER);
        // own case: (0.231 − 0.185)/((0.241 − 0.231)/4) = 18.4 years
        assertThat(WallPlace.least(List.copyOf(wall.values())).orElseThrow().years())
                .isCloseTo(18.4, within(0.05));
        assertThat(hazards(Registers.GULL, "R-02")).isEmpty();
    }

    @Test
    void hasTheGaugeThatWasTakenOff() {
        var gauges = instruments.findByPartOfTag("", Pageable.unpaged()).getContent();
        var worn = gauges.stream()
                .filter(one -> one.facts().tag().equals("PG-03"))
                .findFirst()
                .orElseThrow();
        var found = calibrations.findLatest(worn.id(), Machines.NEW_GAUGE).orElseThrow();

        assertThat(gauges)
                .extracting(one -> one.facts().tag())
                .containsExactly("PG-01", "PG-02", "PG-04", "PG-06", "PG-03", "PG-05");
        assertThat(worn.facts().lines()).isEqualTo(Gauges.PG_03.lines());
        assertThat(worn.version()).isEqualTo(1);
        assertThat(CalibrationStatus.of(found, Machines.NEW_GAUGE)).isEqualTo(CalibrationStatus.OUT_OF_ORDER);
        assertThat(found.points())
                .extracting(point -> point.error().text())
                .containsExactly("2.4 [psi]", "4.8 [psi]", "7.1 [psi]");
    }

    private long siteId(String site) {
        return sites.findByFactsNameIgnoreCase(site).orElseThrow().id();
    }

    private List<VesselHazard> hazards(String site, String tag) {
        Receiver receiver =
                receivers.findBySiteIdAndFactsTagIgnoreCase(siteId(site), tag).orElseThrow();
        return stops.of(receiver, TODAY).stream().map(VesselStop::hazard).toList();
    }
}

@OnH2
final class DemoPlantOnH2Tests extends DemoPlantTests {}

@OnPostgres
final class DemoPlantOnPostgresTests extends DemoPlantTests {}
