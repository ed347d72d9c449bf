package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.trend.SharedError.Cause;

class OutputTrendTests {

    private static final LocalDate START = LocalDate.of(2020, 1, 1);

    @Test
    void saysNothingOfFewerThanTwoTests() {
        assertThat(trend(0.01).code()).isEqualTo(TrendCode.ONE_TEST);
        OutputTrend one = trend(0.01, 100);

        assertThat(one.code()).isEqualTo(TrendCode.ONE_TEST);
        assertThat(one.years()).isZero();
        assertThat(one.yearlyChange()).isEmpty();
        assertThat(one.ruledOutDecline()).isEmpty();
        assertThat(one.detectableDecline()).isEmpty();
        assertThat(one.at(START)).isEmpty();
        assertThat(one.crossing(cfm(90), 0)).isEmpty();
        assertThat(one.difference()).isEmpty();
        assertThat(one.ranks()).isEmpty();
        assertThat(one.steps()).isEmpty();
        assertThat(one.sourceChanges()).isEmpty();
    }

    /** By hand: −10 % ± t(4) 2.776445 · 0.9 · √(3² + 4²) %. */
    @Test
    void comparesTwoTestsWithoutARate() {
        OutputTrend two = OutputTrend.of(List.of(point(0, 100, 0.03), point(365, 90, 0.04)), List.of());

        TestDifference difference = two.difference().orElseThrow();
        assertThat(two.code()).isEqualTo(TrendCode.TWO_TESTS);
        assertThat(two.yearlyChange()).isEmpty();
        assertThat(difference.percent()).isCloseTo(-10, within(1e-12));
        assertThat(difference.halfWidthPercent()).isCloseTo(2.776445 * 0.9 * 5, within(5e-6));
    }

    @Test
    void hasNoRateForTestsOfOneDay() {
        OutputTrend day =
                OutputTrend.of(List.of(point(0, 100, 0.01), point(0, 101, 0.01), point(0, 99, 0.01)), List.of());

        assertThat(day.code()).isEqualTo(TrendCode.TWO_TESTS);
        assertThat(day.yearlyChange()).isEmpty();
        assertThat(day.difference()).isPresent();
    }

    @Test
    void hasNoRateWhenSomethingWasDoneBetweenAllTests() {
        OutputTrend trend = OutputTrend.of(
                List.of(point(0, 100, 0.01), point(200, 90, 0.01), point(400, 80, 0.01)),
                List.of(START.plusDays(100), START.plusDays(300)));

        assertThat(trend.code()).isEqualTo(TrendCode.CANNOT_BE_TOLD_YET);
        assertThat(trend.yearlyChange()).isEmpty();
        assertThat(trend.steps()).isEmpty();
    }

    @Test
    void hasNoRateTooLargeForANumber() {
        OutputTrend trend =
                OutputTrend.of(List.of(point(0, 1, 0.01), point(0, 1, 0.01), point(1, 1000, 0.01)), List.of());

        assertThat(trend.code()).isEqualTo(TrendCode.CANNOT_BE_TOLD_YET);
        assertThat(trend.yearlyChange()).isEmpty();
    }

    /** Exact decline of 10 % a year, told from nothing at any confidence. */
    @Test
    void keepsTheStrongWordForFourTestsAndAYear() {
        assertThat(every(200, 0.002, 3).code()).isEqualTo(TrendCode.SIGNS_OF_DECLINE);
        assertThat(every(90, 0.002, 5).code()).isEqualTo(TrendCode.SIGNS_OF_DECLINE);
        assertThat(every(125, 0.002, 4).code()).isEqualTo(TrendCode.DECLINING);
    }

    /** s = √(4/(4 + 3)) of exact points; u(b) from five tests in four years, t(7) 2.364624 at 95 %, 3.499483 at 99 %. */
    @ParameterizedTest
    @CsvSource({"2.3, NO_DECLINE_SEEN", "2.4, SIGNS_OF_DECLINE", "3.4, SIGNS_OF_DECLINE", "3.6, DECLINING"})
    void changesItsWordAtStudentsFactors(double standardUncertainties, TrendCode code) {
        double u = 0.02 * Math.sqrt(4 / 7.0) / Math.sqrt(10);
        List<OutputPoint> points = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            points.add(point(1461 * i / 4, 100 * Math.exp(-standardUncertainties * u * i), 0.02));
        }

        assertThat(OutputTrend.of(points, List.of()).code()).isEqualTo(code);
    }

    @Test
    void tellsARisingLineFromAFallingOne() {
        OutputTrend trend = trend(0.01, 100, 105, 110, 115);

        assertThat(trend.code()).isEqualTo(TrendCode.READS_HIGHER);
        assertThat(trend.ruledOutDecline()).hasValue(0);
        assertThat(trend.crossing(cfm(90), 0)).isEmpty();
    }

    @Test
    void tellsNoDeclineSeenFromNothingTold() {
        assertThat(trend(0.01, 100, 101, 100, 99, 100).code()).isEqualTo(TrendCode.NO_DECLINE_SEEN);
        assertThat(trend(0.06, 100, 101, 100, 99, 100).code()).isEqualTo(TrendCode.CANNOT_BE_TOLD_YET);
    }

    @Test
    void doesNotHangOnTheOrderOfTests() {
        List<OutputPoint> points = new ArrayList<>(yearly(0.02, 100, 97, 99, 93, 92));
        OutputTrend forward = OutputTrend.of(points, List.of());
        Collections.reverse(points);

        assertThat(OutputTrend.of(points, List.of()).yearlyChange()).isEqualTo(forward.yearlyChange());
    }

    @Test
    void doesNotHangOnTheUnitOfFlow() {
        List<OutputPoint> points = yearly(0.02, 100, 97, 99, 93, 92);
        List<OutputPoint> larger = points.stream()
                .map(point -> new OutputPoint(point.date(), point.flow().times(17), point.relativeU()))
                .toList();

        YearlyChange change = OutputTrend.of(larger, List.of()).yearlyChange().orElseThrow();

        YearlyChange before = OutputTrend.of(points, List.of()).yearlyChange().orElseThrow();
        assertThat(change.percent()).isCloseTo(before.percent(), within(1e-11));
        assertThat(change.standardUncertainty()).isCloseTo(before.standardUncertainty(), within(1e-11));
    }

    @Test
    void believesScatterThatIsLargerThanStated() {
        OutputTrend wild = trend(0.005, 100, 94, 101, 93, 99, 95);
        OutputTrend tame = trend(0.04, 100, 94, 101, 93, 99, 95);

        assertThat(wild.scatter().orElseThrow()).isGreaterThan(5);
        assertThat(wild.code()).isEqualTo(TrendCode.CANNOT_BE_TOLD_YET);
        assertThat(tame.scatter()).isEmpty();
    }

    @Test
    void namesTheTestThatCarriesADeclineTheRanksDoNotSee() {
        List<OutputPoint> points = new ArrayList<>();
        double[] cfm = {100, 99, 101, 100, 99, 101, 100, 88};
        for (int i = 0; i < cfm.length; i++) {
            points.add(new OutputPoint(i + 1, START.plusYears(i), cfm(cfm[i]), i == 7 ? 0.01 : 0.05, List.of()));
        }
        OutputTrend trend = OutputTrend.of(points, List.of());

        assertThat(trend.code().isDecline()).isTrue();
        assertThat(trend.ranks().orElseThrow().agrees()).isFalse();
        assertThat(trend.carriedBy()).contains(8L).hasSizeLessThan(4);
        assertThat(trend(0.01, 100, 98, 96, 94, 92).carriedBy()).isEmpty();
    }

    @Test
    void seesNeighboursThatErrAlike() {
        assertThat(trend(0.02, 100, 103, 103, 103, 100, 97, 97, 97, 97, 100, 103, 103)
                        .neighboursAlike())
                .isTrue();
        assertThat(trend(0.02, 100, 98, 102, 97, 101, 99, 103, 98, 100, 102, 97, 101)
                        .neighboursAlike())
                .isFalse();
        assertThat(trend(0.02, 100, 103, 103, 103, 100, 97, 97, 97, 97, 100, 103)
                        .neighboursAlike())
                .isFalse();
    }

    @Test
    void takesARecordedStepOutOfTheLine() {
        List<OutputPoint> points = yearly(0.01, 100, 98, 96.04, 104.1192, 102.036816, 99.99608);
        LocalDate repair = START.plusYears(3).minusDays(20);

        OutputTrend trend = OutputTrend.of(points, List.of(repair));

        StepVerdict step = trend.steps().get(0);
        assertThat(trend.yearlyChange().orElseThrow().percent()).isCloseTo(-2, within(0.01));
        assertThat(step.code()).isEqualTo(StepVerdict.Code.LEVEL_CHANGED);
        assertThat(step.percent()).isCloseTo(10.6, within(0.1));
        assertThat(percentOfCfm(trend, repair.minusDays(1))).isCloseTo(94.23, within(0.1));
        assertThat(percentOfCfm(trend, repair)).isCloseTo(104.24, within(0.1));
    }

    @Test
    void givesEventsBetweenTheSameTestsOneStep() {
        List<OutputPoint> points = yearly(0.01, 100, 98, 96, 104, 102);
        LocalDate between = START.plusYears(2).plusDays(30);

        List<StepVerdict> steps = OutputTrend.of(
                        points,
                        List.of(START.minusDays(9), START, between, between.plusDays(5), between, START.plusYears(9)))
                .steps();

        assertThat(steps).extracting(StepVerdict::date).containsExactly(between, between.plusDays(5));
        assertThat(steps.get(0).percent()).isEqualTo(steps.get(1).percent());
    }

    @Test
    void countsATestOfTheDayOfAnEventAsAfterIt() {
        List<OutputPoint> points = yearly(0.01, 100, 98, 96, 104, 102);

        List<StepVerdict> steps =
                OutputTrend.of(points, List.of(START.plusYears(3))).steps();

        assertThat(steps).singleElement().extracting(StepVerdict::code).isEqualTo(StepVerdict.Code.LEVEL_CHANGED);
    }

    @Test
    void seesNoChangeOnlyWhereOneWouldHaveBeenSeen() {
        LocalDate event = START.plusYears(4).minusDays(9);

        StepVerdict sharp = OutputTrend.of(yearly(0.01, 100, 101, 100, 99, 100, 101, 100, 99), List.of(event))
                .steps()
                .get(0);
        StepVerdict blunt = OutputTrend.of(yearly(0.05, 100, 101, 100, 99, 100, 101, 100, 99), List.of(event))
                .steps()
                .get(0);

        assertThat(sharp.code()).isEqualTo(StepVerdict.Code.NO_CHANGE_SEEN);
        assertThat(blunt.code()).isEqualTo(StepVerdict.Code.CANNOT_BE_TOLD);
        assertThat(blunt.detectablePercent()).isGreaterThan(5);
    }

    /** A gauge that changes on the day of an overhaul leaves only its own uncertainty to tell the step by. */
    @Test
    void doesNotTellAStepFromAGaugeChangedAtTheSameTime() {
        List<OutputPoint> points = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            points.add(point(365 * i, i < 4 ? 100 : 104, 0.005, gauge(i < 4 ? "A" : "B", 0.04)));
        }

        StepVerdict step =
                OutputTrend.of(points, List.of(START.plusDays(365 * 4))).steps().get(0);

        assertThat(step.code()).isEqualTo(StepVerdict.Code.CANNOT_BE_TOLD);
        assertThat(step.highPercent() - step.lowPercent()).isGreaterThan(100 * 2 * 2.2 * 0.04 * Math.sqrt(2));
    }

    @Test
    void namesEachNewStateOfASourceOnce() {
        List<OutputPoint> points = List.of(
                point(0, 100, 0.01, gauge("A", 0.03)),
                point(100, 100, 0.01, gauge("B", 0.04)),
                point(200, 100, 0.01, gauge("A", 0.03)),
                point(300, 100, 0.01, gauge("B", 0.04)));

        assertThat(OutputTrend.of(points, List.of()).sourceChanges())
                .containsExactly(new SourceChange(START.plusDays(100), Cause.GAUGE, 0.05));
    }

    /** One earlier test: √2 · 2 % with t(4). */
    @Test
    void judgesTheSecondTestByTheFirst() {
        OutputTrend one = trend(0.02, 100);

        NewResult same = one.judge(point(300, 100, 0.02)).orElseThrow();
        NewResult low = one.judge(point(300, 85, 0.02)).orElseThrow();

        assertThat(same.probability()).isCloseTo(1, within(1e-12));
        assertThat(same.high().in(FlowUnit.CFM))
                .isCloseTo(100 * Math.exp(2.776445 * 0.02 * Math.sqrt(2)), within(1e-4));
        assertThat(low.code()).isEqualTo(NewResult.Code.OUT_OF_LINE);
        assertThat(trend(0.02).judge(point(300, 85, 0.02))).isEmpty();
    }

    @Test
    void judgesByTheMeanWhileNoSlopeIsTold() {
        OutputTrend trend = trend(0.03, 100, 101, 99, 100, 100.5);

        NewResult result = trend.judge(point(365 * 9, 100, 0.03)).orElseThrow();

        assertThat(result.expected().in(FlowUnit.CFM)).isCloseTo(100.1, within(0.02));
        assertThat(result.code()).isEqualTo(NewResult.Code.IN_LINE);
    }

    @Test
    void judgesOnlyByTestsSinceTheLastEvent() {
        LocalDate overhaul = START.plusYears(3).minusDays(9);
        OutputTrend trend = OutputTrend.of(yearly(0.03, 80, 81, 80, 100, 101), List.of(overhaul));

        NewResult after = trend.judge(point(365 * 5, 100, 0.03)).orElseThrow();

        assertThat(after.expected().in(FlowUnit.CFM)).isBetween(100.0, 101.0);
        assertThat(OutputTrend.of(yearly(0.03, 80, 81, 80), List.of(overhaul)).judge(point(365 * 5, 100, 0.03)))
                .isEmpty();
        assertThat(OutputTrend.of(yearly(0.03, 80, 81, 80), List.of(START.plusYears(9)))
                        .judge(point(365 * 5, 80, 0.03)))
                .isPresent();
    }

    /** Against tests with gauge A a test with gauge B carries both gauges' errors, one with A none. */
    @Test
    void widensTheJudgementForAnotherGauge() {
        OutputTrend trend = OutputTrend.of(List.of(point(0, 100, 0.02, gauge("A", 0.03))), List.of());

        double same =
                halfWidth(trend.judge(point(90, 100, 0.02, gauge("A", 0.03))).orElseThrow());
        double other =
                halfWidth(trend.judge(point(90, 100, 0.02, gauge("B", 0.04))).orElseThrow());

        assertThat(same).isCloseTo(2.776445 * Math.sqrt(0.0008), within(1e-7));
        assertThat(other).isCloseTo(2.776445 * Math.sqrt(0.0008 + 0.0025), within(1e-7));
    }

    /** Where the record knows both gauges, the shift that it found counts for the next test. */
    @Test
    void learnsTheShiftBetweenTwoGauges() {
        List<OutputPoint> points = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            points.add(point(30 * i, i % 2 == 0 ? 100 : 106, 0.01, gauge(i % 2 == 0 ? "A" : "B", 0.04)));
        }
        OutputTrend trend = OutputTrend.of(points, List.of());

        assertThat(trend.judge(point(400, 106, 0.01, gauge("B", 0.04)))
                        .orElseThrow()
                        .code())
                .isEqualTo(NewResult.Code.IN_LINE);
        assertThat(trend.judge(point(400, 106, 0.01, gauge("A", 0.04)))
                        .orElseThrow()
                        .code())
                .isEqualTo(NewResult.Code.OUT_OF_LINE);
    }

    @Test
    void knowsAlreadyBelow() {
        OutputTrend trend = trend(0.01, 100, 95, 90, 85, 80);

        assertThat(trend.crossing(cfm(95), 0).orElseThrow().code()).isEqualTo(Crossing.Code.ALREADY_BELOW);
        assertThat(trend.crossing(cfm(95), 0.3).map(Crossing::code)).isNotEqualTo(Crossing.Code.ALREADY_BELOW);
        assertThat(trend.crossing(cfm(70), 0).orElseThrow().code()).isEqualTo(Crossing.Code.BETWEEN);
    }

    @Test
    void doesNotLookFurtherThanTwiceTheRecord() {
        Crossing crossing =
                trend(0.002, 100, 99.5, 99, 98.5, 98).crossing(cfm(50), 0).orElseThrow();

        assertThat(crossing.code()).isEqualTo(Crossing.Code.LATER_THAN);
        assertThat(crossing.earliest()).isBetween(START.plusYears(12).minusDays(1), START.plusYears(12));
        assertThat(crossing.best()).isNull();
        assertThat(crossing.latest()).isNull();
    }

    private OutputTrend trend(double relativeU, double... cfm) {
        return OutputTrend.of(yearly(relativeU, cfm), List.of());
    }

    private static OutputTrend every(int days, double relativeU, int count) {
        List<OutputPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(point(days * i, 100 * Math.pow(0.9, days * i / 365.25), relativeU));
        }
        return OutputTrend.of(points, List.of());
    }

    private static List<OutputPoint> yearly(double relativeU, double... cfm) {
        List<OutputPoint> points = new ArrayList<>();
        for (int i = 0; i < cfm.length; i++) {
            points.add(new OutputPoint(START.plusYears(i), cfm(cfm[i]), relativeU));
        }
        return points;
    }

    private static OutputPoint point(int day, double cfm, double relativeU, SharedError... shared) {
        return new OutputPoint(day, START.plusDays(day), cfm(cfm), relativeU, List.of(shared));
    }

    private static SharedError gauge(String key, double relativeU) {
        return new SharedError(Cause.GAUGE, key, 1, relativeU);
    }

    private static double halfWidth(NewResult result) {
        return Math.log(result.high().cubicMetresPerSecond() / result.low().cubicMetresPerSecond()) / 2;
    }

    private static double percentOfCfm(OutputTrend trend, LocalDate date) {
        return trend.at(date).orElseThrow().flow().in(FlowUnit.CFM);
    }

    /** Valves that failed over a year and were replaced: what matters is how the output goes since. */
    @Test
    void followsTheTestsSinceARepairThatChangedTheSlope() {
        List<OutputPoint> points = new ArrayList<>();
        for (int quarter = 0; quarter < 8; quarter++) {
            points.add(point(91 * quarter, 100 * StrictMath.exp(-0.12 * 91 * quarter / 365.25), 0.01));
        }
        for (int quarter = 8; quarter < 20; quarter++) {
            points.add(point(91 * quarter, quarter % 2 == 0 ? 99.5 : 100, 0.01));
        }
        LocalDate repair = START.plusDays(91 * 8 - 10);

        OutputTrend told = OutputTrend.of(points, List.of(repair));
        OutputTrend since = OutputTrend.of(points.subList(8, 20), List.of());

        assertThat(told.bend()).contains(repair);
        assertThat(told.code()).isEqualTo(TrendCode.NO_DECLINE_SEEN);
        assertThat(told.yearlyChange().orElseThrow().percent())
                .isCloseTo(since.yearlyChange().orElseThrow().percent(), within(1e-9));
        assertThat(told.steps().get(0).percent()).isCloseTo(26, within(2.0));
        assertThat(OutputTrend.of(points, List.of()).bend()).isEmpty();
    }

    @Test
    void keepsOneSlopeWhereTheTestsDoNotSpeakAgainstIt() {
        List<OutputPoint> points = new ArrayList<>();
        for (int quarter = 0; quarter < 20; quarter++) {
            double level = quarter < 10 ? 100 : 104;
            points.add(point(
                    91 * quarter,
                    level * StrictMath.exp(-0.02 * 91 * quarter / 365.25) * (1 + 0.004 * (quarter % 3 - 1)),
                    0.01));
        }

        assertThat(OutputTrend.of(points, List.of(START.plusDays(900))).bend()).isEmpty();
    }

    private static FlowRate cfm(double value) {
        return FlowRate.of(value, FlowUnit.CFM);
    }
}
