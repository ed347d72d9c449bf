package plantair.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressor;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.InstrumentKind;
import plantair.maintenance.EventKind;
import plantair.quantity.Entered;
import plantair.quantity.Rounded;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.Plant;
import plantair.testrecord.InstrumentCopy;
import plantair.trend.Standing;
import plantair.trend.TrendCode;

/** The next step of a machine, from tests as they are recorded. */
@OnH2
final class NextStepsTests {

    @Autowired
    private StoredStates states;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void machine() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
    }

    private void test(String day, double seconds) {
        plant.test(compressor, day + "T14:00:00Z", text(seconds - 0.3), text(seconds), text(seconds + 0.3));
    }

    private static String text(double seconds) {
        return Rounded.places(seconds, 2);
    }

    private MachineState state() {
        return states.findById(compressor.id()).orElseThrow();
    }

    /** Year one of the wear story: 100, 97.6, 94.1 and 88.2 % of baseline. */
    @Test
    void asksForTheCheapestChecksBeforeARebuild() {
        test("2025-06-05", 60.5);
        test("2025-09-05", 62.0);
        test("2025-12-05", 64.3);
        test("2026-03-05", 68.6);

        assertThat(state().standing()).isIn(Standing.WATCH, Standing.PLAN);
        assertThat(state().nextStep()).isEqualTo(NextStep.CHECK_CHEAPEST_FIRST);
    }

    @Test
    void foretellsARebuildFromALongDecline() {
        for (int year = 2017; year < 2027; year++) {
            test(year + "-01-05", 60.5 * Math.pow(1.0125, year - 2017));
        }

        assertThat(state().trendCode()).isEqualTo(TrendCode.DECLINING);
        assertThat(state().standing()).isEqualTo(Standing.PLAN);
        assertThat(state().nextStep()).isEqualTo(NextStep.PLAN_REBUILD);
        // at 1.25 % a year 80 % is reached 18 years after the first test: ln 0.8 / ln 1.0125
        assertThat(state().nextStepBy().orElseThrow())
                .isBetween(LocalDate.parse("2031-01-01"), LocalDate.parse("2035-01-05"));
    }

    @Test
    void actsOnNoFigureOfAGaugePastItsDate() {
        plant.gauge("G-1");
        test("2025-06-05", 60.5);
        for (String day : List.of("2026-01-05", "2026-02-05")) {
            plant.plan(compressor)
                    .on(day + "T14:00:00Z")
                    .runs("79.7", "80.0", "80.3")
                    .with(List.of(gauge(CalibrationStatus.OVERDUE)), "no other")
                    .record();
        }
        NextStep overdue = state().nextStep();
        plant.plan(compressor)
                .on("2026-03-05T14:00:00Z")
                .runs("79.7", "80.0", "80.3")
                .with(List.of(gauge(CalibrationStatus.IN_DATE)), null)
                .record();

        assertThat(overdue).isEqualTo(NextStep.CHECK_GAUGE);
        assertThat(state().nextStep()).isNotEqualTo(NextStep.CHECK_GAUGE);
    }

    private static InstrumentCopy gauge(CalibrationStatus status) {
        return new InstrumentCopy(
                InstrumentKind.GAUGE,
                1,
                "G-1",
                Entered.parse("200 [psi]"),
                Entered.parse("1 %"),
                Entered.parse("2 [psi]"),
                null,
                LocalDate.parse("2025-12-31"),
                status);
    }

    @Test
    void drainsWhenMoreComesOutThanCanBeTrue() {
        test("2025-06-05", 60.5);
        test("2026-03-05", 45.0);

        assertThat(state().nextStep()).isEqualTo(NextStep.DRAIN_AND_REPEAT);
    }

    @Test
    void drainsWhenTheTestsReadHigherOverTheYears() {
        for (int year = 2019; year < 2027; year++) {
            test(year + "-01-05", 66.5 - (year - 2019) * 0.8);
        }

        assertThat(state().trendCode()).isEqualTo(TrendCode.READS_HIGHER);
        assertThat(state().nextStep()).isEqualTo(NextStep.DRAIN_AND_REPEAT);
    }

    @Test
    void waitsForATestAfterWorkAndForNoneAfterThat() {
        test("2025-06-05", 60.5);
        plant.event(compressor, LocalDate.parse("2025-06-05"), EventKind.VALVES, true, "");
        NextStep sameDay = state().nextStep();
        plant.event(compressor, LocalDate.parse("2025-07-01"), EventKind.GAUGE_CHANGE, false, "");
        NextStep later = state().nextStep();
        test("2025-08-05", 60.5);

        assertThat(sameDay).isEqualTo(NextStep.NONE);
        assertThat(later).isEqualTo(NextStep.TEST_AFTER_EVENT);
        assertThat(state().nextStep()).isEqualTo(NextStep.NONE);
        assertThat(state().nextStepBy()).contains(LocalDate.parse("2025-11-05"));
    }
}
