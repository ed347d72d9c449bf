package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.statistics.ReferenceTable;
import plantair.trend.SharedError.Cause;

/**
 * Nine own tests; source, status and tolerance stand in the head of reference/statistics/nine_tests.csv. Slopes, steps and χ²
 * by R 4.2.2, the rest by a separate program with R's Student factors.
 */
class OutputTrendReferenceTests {

    private static final List<String[]> ROWS =
            ReferenceTable.read("nine_tests.csv").rows();

    private final OutputTrend trend = OutputTrend.of(points(List.of(), List.of()), List.of());

    /** The first five tests share some errors, the last four others. */
    private static List<OutputPoint> points(List<SharedError> firstFive, List<SharedError> lastFour) {
        return IntStream.range(0, 9)
                .mapToObj(i -> new OutputPoint(
                        i + 1,
                        LocalDate.parse(ROWS.get(i)[0]),
                        flow(Double.parseDouble(ROWS.get(i)[1])),
                        Double.parseDouble(ROWS.get(i)[2]) / 100,
                        i < 5 ? firstFive : lastFour))
                .toList();
    }

    private static FlowRate flow(double litresPerMinute) {
        return FlowRate.of(litresPerMinute, FlowUnit.LITRE_PER_MINUTE);
    }

    /** Slope −0.022825270, standard error 0.00643265, 11 degrees of freedom, decline 0.86297 to 3.63079 %. */
    @Test
    void agreesWithRsWeightedLineAndThePooledInterval() {
        YearlyChange change = trend.yearlyChange().orElseThrow();

        assertThat(change.percent()).isCloseTo(-2.25667, within(5e-6));
        assertThat(change.percent()).isCloseTo(100 * Math.expm1(-0.022825270), within(5e-8));
        assertThat(change.standardUncertainty()).isCloseTo(100 * Math.exp(-0.022825270) * 0.00643265, within(5e-7));
        assertThat(change.lowPercent()).isCloseTo(-3.63079, within(5e-6));
        assertThat(change.highPercent()).isCloseTo(-0.86297, within(5e-6));
        assertThat(trend.ruledOutDecline().orElseThrow()).isCloseTo(3.63079, within(5e-6));
        assertThat(trend.scatter()).isEmpty();
    }

    /** p = 0.004565, below one in a hundred; nine tests over 2.8 years. */
    @Test
    void callsItDeclining() {
        assertThat(trend.code()).isEqualTo(TrendCode.DECLINING);
        assertThat(trend.count()).isEqualTo(9);
        assertThat(trend.years()).isCloseTo(2.819986, within(5e-7));
    }

    /** 1.9596 with the sum of two factors, 1.9607 with the exact non-central one. */
    @Test
    void agreesWithTheDetectableDecline() {
        assertThat(trend.detectableDecline().orElseThrow()).isCloseTo(1.9596, within(5e-5));
    }

    /** R: a(0) 6.028794517 for q in L/min; 385.5049 L/min at 3.252567 a, 2024-06-15. */
    @Test
    void agreesWithRsFittedFlow() {
        assertThat(litresPerMinute(
                        trend.at(LocalDate.parse("2021-03-15")).orElseThrow().flow()))
                .isCloseTo(Math.exp(6.028794517), within(5e-7));
        assertThat(litresPerMinute(
                        trend.at(LocalDate.parse("2024-06-15")).orElseThrow().flow()))
                .isCloseTo(385.5049, within(5e-5));
    }

    /** Of the mean line, at the weighted mean of the dates: ȳ 6.000136838, 1/√Σw with s 0.678742, Σw 12447.222222. */
    @Test
    void givesTheBandOfTheLine() {
        Level level = trend.at(LocalDate.parse("2022-06-16")).orElseThrow();

        assertThat(level.relativeU()).isCloseTo(0.678742 / Math.sqrt(12447.222222), within(2e-7));
        assertThat(litresPerMinute(level.flow())).isCloseTo(Math.exp(6.000136838), within(0.02));
        assertThat(Math.log(level.high().cubicMetresPerSecond() / level.low().cubicMetresPerSecond()))
                .isCloseTo(2 * 2.200985 * level.relativeU(), within(2e-8));
    }

    @ParameterizedTest
    @CsvSource({"378, IN_LINE, 0.39346", "360, WORTH_REPEATING, 0.01024", "350, OUT_OF_LINE, 0.00113"})
    void agreesWithTheJudgementOfOneMoreTest(double litresPerMinute, NewResult.Code code, double probability) {
        NewResult result = trend.judge(new OutputPoint(LocalDate.parse("2024-06-15"), flow(litresPerMinute), 0.025))
                .orElseThrow();

        assertThat(result.code()).isEqualTo(code);
        assertThat(result.probability()).isCloseTo(probability, within(5e-6));
        assertThat(litresPerMinute(result.expected())).isCloseTo(385.5049, within(5e-5));
        assertThat(litresPerMinute(result.low())).isCloseTo(367.1735, within(5e-5));
        assertThat(litresPerMinute(result.high())).isCloseTo(404.7515, within(5e-5));
    }

    /**
     * 5.05105 a: 1844 whole days after the first test. At 80 % 3.95278 to 7.46422 a, at 95 % 3.52562 to 11.32363 a, of which
     * the last is beyond 8.46, the last test and twice the record.
     */
    @Test
    void agreesWithTheCrossingOfALimit() {
        Crossing crossing = trend.crossing(flow(370), 0).orElseThrow();

        LocalDate first = LocalDate.parse("2021-03-15");
        assertThat(crossing.code()).isEqualTo(Crossing.Code.BETWEEN);
        assertThat(crossing.best()).isEqualTo("2026-04-02");
        assertThat(crossing.earliest()).isEqualTo(first.plusDays((long) (3.95278 * 365.25)));
        assertThat(crossing.latest()).isEqualTo(first.plusDays((long) (7.46422 * 365.25)));
        assertThat(crossing.earliest95()).isEqualTo(first.plusDays((long) (3.52562 * 365.25)));
        assertThat(crossing.latest95()).isNull();
    }

    /** Best 7.48562 a, at 80 % 5.72880 to 11.40077 a: the record does not reach so far, and no latest day is given. */
    @Test
    void givesNoLatestDayBeyondTheReachOfTheRecord() {
        Crossing crossing = trend.crossing(flow(350), 0).orElseThrow();

        assertThat(crossing.code()).isEqualTo(Crossing.Code.NOT_BEFORE);
        assertThat(crossing.best()).isNull();
        assertThat(crossing.earliest()).isEqualTo(LocalDate.parse("2021-03-15").plusDays((long) (5.72880 * 365.25)));
        assertThat(crossing.earliest95())
                .isEqualTo(LocalDate.parse("2021-03-15").plusDays((long) (5.05622 * 365.25)));
    }

    /**
     * S −28, p 0.0024250441 by R; median slope −0.020936660. Of the 36 slopes the 9th and 28th are −0.033959225 and
     * −0.013116759.
     */
    @Test
    void agreesWithTheRanks() {
        RankCheck check = trend.ranks().orElseThrow();

        assertThat(check.probability()).isCloseTo(0.0024250441, within(5e-11));
        assertThat(check.percent()).isCloseTo(-2.07190, within(5e-6));
        assertThat(check.lowPercent()).isCloseTo(100 * Math.expm1(-0.033959225), within(5e-8));
        assertThat(check.highPercent()).isCloseTo(100 * Math.expm1(-0.013116759), within(5e-8));
        assertThat(check.agrees()).isTrue();
        assertThat(trend.carriedBy()).isEmpty();
    }

    @Nested
    class WithAnotherGaugeFromTheSixthTestOn {

        private final OutputTrend changed = OutputTrend.of(points(List.of(gauge("A")), List.of(gauge("B"))), List.of());

        private static SharedError gauge(String key) {
            return new SharedError(Cause.GAUGE, key, 1, 0.015);
        }

        /** Slope −0.023191087, standard error 0.01047113, 10 degrees of freedom, −0.01401 to 4.54566 % decline. */
        @Test
        void agreesWithGeneralisedLeastSquares() {
            YearlyChange change = changed.yearlyChange().orElseThrow();

            assertThat(change.percent()).isCloseTo(-2.29242, within(5e-6));
            assertThat(change.standardUncertainty()).isCloseTo(100 * Math.exp(-0.023191087) * 0.01047113, within(5e-7));
            assertThat(change.lowPercent()).isCloseTo(-4.54566, within(1e-5));
            assertThat(change.highPercent()).isCloseTo(0.01401, within(1e-5));
        }

        @Test
        void takesTheSignalBack() {
            assertThat(changed.code()).isEqualTo(TrendCode.CANNOT_BE_TOLD_YET);
            assertThat(changed.detectableDecline().orElseThrow())
                    .isCloseTo(-100 * Math.expm1(-0.01047113 * (2.228139 + 0.879058)), within(5e-5));
        }

        /** √2 · 1.5 %. */
        @Test
        void tellsOfTheChange() {
            assertThat(changed.sourceChanges()).singleElement().satisfies(change -> {
                assertThat(change.since()).isEqualTo("2022-10-03");
                assertThat(change.cause()).isEqualTo(Cause.GAUGE);
                assertThat(change.relativeU()).isCloseTo(0.015 * Math.sqrt(2), within(1e-12));
            });
        }

        @Test
        void isTheSameAsNoSharedErrorWhenAllTestsHaveIt() {
            OutputTrend same = OutputTrend.of(points(List.of(gauge("A")), List.of(gauge("A"))), List.of());

            assertThat(same.yearlyChange()).isEqualTo(trend.yearlyChange());
            assertThat(same.sourceChanges()).isEmpty();
        }
    }

    @Nested
    class WithAnOverhaulBeforeTheSeventhTest {

        private final OutputTrend stepped =
                OutputTrend.of(points(List.of(), List.of()), List.of(LocalDate.parse("2022-12-01")));

        /** R: slope −0.028168403, step 0.012460623; standard errors 0.01274625 and 0.02533558 with 10 degrees of freedom. */
        @Test
        void agreesWithRsCommonSlopeAndStep() {
            YearlyChange change = stepped.yearlyChange().orElseThrow();
            StepVerdict step = stepped.steps().get(0);

            assertThat(change.percent()).isCloseTo(100 * Math.expm1(-0.028168403), within(1e-7));
            assertThat(change.standardUncertainty()).isCloseTo(100 * Math.exp(-0.028168403) * 0.01274625, within(1e-6));
            assertThat(stepped.steps()).hasSize(1);
            assertThat(step.date()).isEqualTo("2022-12-01");
            assertThat(step.percent()).isCloseTo(1.2539, within(5e-5));
            assertThat(step.lowPercent()).isCloseTo(-4.3037, within(5e-5));
            assertThat(step.highPercent()).isCloseTo(7.1342, within(5e-5));
            assertThat(step.code()).isEqualTo(StepVerdict.Code.CANNOT_BE_TOLD);
        }

        /** 8.198 % with the exact non-central factor, 0.1 % above the sum of two. */
        @Test
        void agreesWithTheDetectableStep() {
            assertThat(stepped.steps().get(0).detectablePercent()).isCloseTo(8.198, within(0.01));
        }
    }

    private static double litresPerMinute(FlowRate flow) {
        return flow.in(FlowUnit.LITRE_PER_MINUTE);
    }
}
