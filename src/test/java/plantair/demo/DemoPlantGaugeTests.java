package plantair.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.annotation.Transactional;
import plantair.demo.Occasion.Trouble;
import plantair.instrument.Calibrations;
import plantair.instrument.Instruments;
import plantair.pumpup.FindingCode;
import plantair.pumpup.PumpUpResult;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.Restatements;
import plantair.testrecord.StoredResult;

/** The gauges, restatement and static holds of the demo plant as the application sees them. */
abstract class DemoPlantGaugeTests extends LoadedDemoPlant {

    @Autowired
    private Instruments instruments;

    @Autowired
    private Calibrations calibrations;

    @Autowired
    private Restatements restatements;

    /** As recorded the old gauge makes a step; its certificate, signed for, takes it away. */
    @Test
    void restatesTheTestsOfTheGaugeThatReadHigh() {
        List<StoredResult> old = current("C-03", day -> day.getYear() == 2022);
        double recorded = old.stream()
                .mapToDouble(result -> result.asRecorded().orElseThrow().cubicMetresPerSecond())
                .average()
                .orElseThrow();
        double restated = mean("C-03", day -> day.getYear() == 2022);
        double after = mean("C-03", day -> !day.isBefore(Machines.NEW_GAUGE));

        assertThat(after / recorded).isBetween(0.91, 0.96);
        assertThat(after / restated).isBetween(0.98, 1.01);
    }

    /** The list that was signed is the one that signing on the page would have made. */
    @Test
    void restatesTheTestsThatTheCertificateTouches() {
        long worn = jdbc.queryForObject("select id from instrument where tag = 'PG-03'", Long.class);
        var certificate = calibrations.findLatest(worn, Machines.NEW_GAUGE).orElseThrow();

        assertThat(jdbc.queryForList("select test_id from gauge_restatement_test", Long.class))
                .hasSizeGreaterThan(10)
                .containsExactlyInAnyOrderElementsOf(restatements.touchedBy(certificate).stream()
                        .map(PumpUpTest::id)
                        .toList());
        assertThat(jdbc.queryForList(
                        "select test_id from pump_up_result where restated_by = ?", Long.class, certificate.id()))
                .hasSameElementsAs(jdbc.queryForList("select test_id from gauge_restatement_test", Long.class));
    }

    /** The valve cost an eighth; the hold finds it, but a test with a leak does not show the machine's wear. */
    @Test
    void addsBackWhatTheValveLeaked() {
        DemoTest leaking = truth(Trouble.LEAKING_VALVE);
        StoredResult result = result(leaking);
        PumpUpResult whole = projection.result(result);
        double added = whole.leak().inRuns().cubicMetresPerSecond();
        double found = result.freeAir().orElseThrow().cubicMetresPerSecond();

        assertThat(whole.findings()).anyMatch(finding -> finding.code() == FindingCode.LEAK_ADDED);
        assertThat(result.joinsTrend()).isFalse();
        assertThat(found / leaking.trueFlow()).isBetween(0.97, 1.04);
        assertThat((found - added) / leaking.trueFlow()).isBetween(0.84, 0.92);
    }

    @Test
    void holdsThePressureOfLateTestsOfC02() {
        List<PumpUpResult> held = current("C-02", day -> day.getYear() >= 2025).stream()
                .map(projection::result)
                .toList();

        assertThat(held)
                .hasSizeGreaterThan(4)
                .allMatch(result -> result.leak() != null && !result.leak().added())
                .allMatch(PumpUpResult::joinsTrend);
    }

    @Test
    @Transactional(readOnly = true)
    void namesEachGaugeAsTheRegisterHadIt() {
        List<PumpUpTest> named = TRUTH.stream()
                .map(test -> tests.findBySubmission(test.draft().submission()).orElseThrow())
                .filter(test -> !test.instruments().isEmpty())
                .toList();

        assertThat(named).hasSizeGreaterThan(75).allSatisfy(test -> {
            var copy = test.instruments().get(0);
            var gauge = instruments.findById(copy.instrumentId()).orElseThrow();
            LocalDate day = test.performedAt().atZone(test.zone()).toLocalDate();
            var latest = calibrations.findLatest(gauge.id(), day).orElse(null);

            assertThat(test.instruments()).containsExactly(InstrumentCopy.of(gauge, latest, day));
            assertThat(test.overrideReason() != null).isEqualTo(copy.isPastItsDate());
        });
    }

    @Test
    void namesTheGaugeOfTheDay() {
        assertThat(TRUTH).allSatisfy(test -> {
            boolean mesa = test.draft().compressor().site().facts().name().equals(Registers.MESA);
            assertThat(test.draft().instruments()).hasSize(mesa ? 0 : 1);
        });
        assertThat(gauges("C-01")).containsExactly("PG-01");
        assertThat(gauges("C-02")).containsExactly("PG-02");
        assertThat(gauges("C-03")).containsExactly("PG-03", "PG-04");
        assertThat(jdbc.queryForList(
                        "select distinct tag from pump_up_instrument where status = 'OVERDUE'", String.class))
                .containsExactly("PG-02");
    }

    private List<String> gauges(String compressor) {
        return jdbc.queryForList(
                "select i.tag from pump_up_instrument i join pump_up_test t on t.id = i.test_id"
                        + " join compressor c on c.id = t.compressor_id where c.tag = ?"
                        + " group by i.tag order by min(t.performed_at)",
                String.class,
                compressor);
    }
}

@OnH2
final class DemoPlantGaugeOnH2Tests extends DemoPlantGaugeTests {}

@OnPostgres
final class DemoPlantGaugeOnPostgresTests extends DemoPlantGaugeTests {}
