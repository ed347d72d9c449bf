package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.pumpup.FlowAtPressureReferenceTests.HALF_CUBIC_METRE;
import static plantair.quantity.PressureUnit.BAR;
import static plantair.quantity.TemperatureUnit.CELSIUS;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

class FlowAtPressureTests {

    private static GaugePressure bar(double value) {
        return GaugePressure.of(value, BAR);
    }

    private static TimedPressure point(double seconds, double bar) {
        return new TimedPressure(seconds, bar(bar));
    }

    /** A rise of 0.02 bar each second from 3 bar with a small wave, so that it scatters; n readings. */
    private static List<TimedPressure> steady(int n, double from, double perSecond) {
        return IntStream.range(0, n)
                .mapToObj(i -> point(i, from + perSecond * i + 0.002 * Math.sin(7.0 * i)))
                .toList();
    }

    private static FlowAtPressure.Outcome at(List<TimedPressure> points, double bar) {
        return FlowAtPressure.of(PressureRise.of(points), HALF_CUBIC_METRE, bar(bar));
    }

    private static List<CurveCode> codes(FlowAtPressure.Outcome outcome) {
        return outcome.findings().stream().map(CurveFinding::code).toList();
    }

    @Test
    void findsASteadyRise() {
        FlowAtPressure flow = at(steady(200, 3, 0.02), 5).flow().orElseThrow();

        double expected = 0.5 * 0.02e5 / 1.01325e5;
        assertThat(flow.byHand().cubicMetresPerSecond() / expected).isCloseTo(1, within(4 * flow.relativeFit()));
        assertThat(flow.relativeFit()).isLessThan(1e-3);
    }

    @Test
    void refusesToExtrapolate() {
        List<TimedPressure> points = steady(200, 3, 0.02);
        double top = points.stream().mapToDouble(TimedPressure::pascals).max().orElseThrow();

        FlowAtPressure.Outcome outcome = at(points, 7.5);

        assertThat(outcome.flow()).isEmpty();
        assertThat(outcome.findings()).contains(new CurveFinding(CurveCode.NOT_COVERED, 7.5e5 - top));
        assertThat(at(points, 2.99).flow()).isEmpty();
        assertThat(at(points, 3.1).flow()).isPresent();
    }

    @Test
    void warnsNearAnEndOfTheReadings() {
        List<TimedPressure> points = steady(200, 3, 0.02);

        assertThat(codes(at(points, 3.3))).contains(CurveCode.NEAR_EDGE);
        assertThat(codes(at(points, 5))).doesNotContain(CurveCode.NEAR_EDGE);
    }

    @Test
    void refusesFewPoints() {
        assertThat(codes(at(steady(5, 3, 0.5), 4))).contains(CurveCode.FEW_POINTS);
        assertThat(at(steady(6, 3, 0.5), 4).flow()).isPresent();
        assertThat(codes(at(List.of(), 4))).containsExactly(CurveCode.FEW_POINTS);
    }

    /** A logger with a step of 1 bar sees three pressures in the window: too few for a curve with three terms. */
    @Test
    void refusesReadingsOfFewPressures() {
        List<TimedPressure> coarse = IntStream.range(0, 60)
                .mapToObj(i -> point(i, 4 + Math.floor(i / 20.0)))
                .toList();

        assertThat(codes(at(coarse, 5))).contains(CurveCode.FEW_POINTS);
    }

    @Test
    void refusesTimesThatRunBackwards() {
        List<TimedPressure> points = new ArrayList<>(steady(50, 3, 0.05));
        Collections.swap(points, 20, 21);

        assertThat(codes(at(points, 4))).containsExactly(CurveCode.TIME_FALLS);
        assertThat(at(points, 4).flow()).isEmpty();
    }

    @Test
    void refusesAFall() {
        List<TimedPressure> fall =
                IntStream.range(0, 50).mapToObj(i -> point(i, 8 - 0.05 * i)).toList();

        assertThat(at(fall, 7).flow()).isEmpty();
    }

    /** The pressure leaps at first and then creeps: the fitted curve would go back in time at its foot. */
    @Test
    void refusesACurveThatTurnsBack() {
        List<TimedPressure> turning = IntStream.range(0, 40)
                .mapToObj(i -> point(100 * Math.pow(i / 40.0, 6), 4 + 0.05 * i))
                .toList();

        assertThat(at(turning, 5).flow()).isEmpty();
        assertThat(codes(at(turning, 5))).contains(CurveCode.NOT_RISING);
    }

    @Test
    void livesWithEqualPressuresAndNamesThem() {
        List<TimedPressure> stepped = IntStream.range(0, 200)
                .mapToObj(i -> point(i, Math.rint((3 + 0.02 * i) * 10) / 10))
                .toList();

        FlowAtPressure.Outcome outcome = at(stepped, 5);

        assertThat(outcome.flow().orElseThrow().byHand().cubicMetresPerSecond())
                .isCloseTo(0.5 * 0.02e5 / 1.01325e5, within(1e-4));
        assertThat(outcome.findings()).anySatisfy(finding -> {
            assertThat(finding.code()).isEqualTo(CurveCode.PRESSURE_STOOD);
            assertThat(finding.number()).isGreaterThan(100);
        });
    }

    @Test
    void namesReadingsThatFall() {
        List<TimedPressure> points = new ArrayList<>(steady(100, 3, 0.04));
        points.set(50, point(50, 4.9));

        PressureRise rise = PressureRise.of(points);

        assertThat(rise.findings()).containsExactly(new CurveFinding(CurveCode.PRESSURE_FELL, 1));
        assertThat(FlowAtPressure.of(rise, HALF_CUBIC_METRE, bar(5)).flow()).isPresent();
    }

    @Test
    void namesABendThatTheCurveDoesNotFollow() {
        List<TimedPressure> kinked = IntStream.range(0, 100)
                .mapToObj(i -> point(i < 50 ? i : 50 + 3 * (i - 50), 3 + 0.04 * i + 0.001 * Math.sin(5.0 * i)))
                .toList();

        assertThat(codes(at(kinked, 5))).contains(CurveCode.BENDS);
        assertThat(codes(at(steady(200, 3, 0.02), 5))).doesNotContain(CurveCode.BENDS);
    }

    @Test
    void keepsTheRiseOfALogWithAStandBeforeAndABlowOffAfter() {
        List<TimedPressure> log = new ArrayList<>();
        IntStream.range(0, 60).forEach(i -> log.add(point(i, 2 + (i % 2) * 0.01)));
        IntStream.range(0, 100).forEach(i -> log.add(point(60 + i, 2 + 0.06 * (i + 1))));
        IntStream.range(0, 60).forEach(i -> log.add(point(160 + i, 8 - (i % 2) * 0.01)));
        IntStream.range(0, 50).forEach(i -> log.add(point(220 + i, 8 - 0.16 * (i + 1))));

        PressureRise rise = PressureRise.of(log);

        assertThat(rise.points()).hasSizeBetween(99, 103);
        assertThat(rise.findings())
                .contains(
                        new CurveFinding(CurveCode.LEFT_OUT, 270 - rise.points().size()));
        FlowAtPressure flow =
                FlowAtPressure.of(rise, HALF_CUBIC_METRE, bar(5)).flow().orElseThrow();
        assertThat(flow.byHand().cubicMetresPerSecond()).isCloseTo(0.5 * 0.06e5 / 1.01325e5, within(1e-6));
    }

    @Test
    void keepsEveryReadingOfASmoothRise() {
        List<TimedPressure> smooth =
                IntStream.range(0, 1000).mapToObj(i -> point(i, 3 + 0.004 * i)).toList();

        assertThat(PressureRise.of(smooth)).isEqualTo(new PressureRise(smooth, List.of()));
    }

    /** One rise of several: the last step of a saw is the rise that reached the top. */
    @Test
    void keepsOneRiseOfSeveral() {
        List<TimedPressure> saw = new ArrayList<>();
        for (int cycle = 0; cycle < 3; cycle++) {
            double since = 200.0 * cycle;
            IntStream.range(0, 100).forEach(i -> saw.add(point(since + i, 6 + 0.02 * i)));
            IntStream.range(0, 100).forEach(i -> saw.add(point(since + 100 + i, 8 - 0.02 * i)));
        }

        assertThat(PressureRise.of(saw).points()).hasSizeBetween(98, 102);
    }

    /** A million readings: what grew with the square of their number would not end. */
    @Test
    void takesAMillionReadings() {
        FlowAtPressure flow = at(steady(1_000_000, 3, 4e-6), 5).flow().orElseThrow();

        assertThat(flow.points()).isGreaterThan(975_000);
        assertThat(flow.relativeU()).isCloseTo(FlowAtPressure.MODEL_U, within(1e-6));
    }

    /** Ten neighbours in one: 2,000 of 20,000, and the same slope of 2e-4 bar/s to a hundredth of a percent. */
    @Test
    void averagesNeighboursOfManyReadings() {
        var rise = new PressureRise(steady(20_000, 3, 2e-4), List.of());

        PressureRise few = rise.averaged(2_000);

        assertThat(few.points()).hasSize(2_000);
        assertThat(few.points().get(0).seconds()).isCloseTo(4.5, within(1e-9));
        assertThat(FlowAtPressure.of(few, HALF_CUBIC_METRE, bar(5))
                        .flow()
                        .orElseThrow()
                        .byHand()
                        .over(FlowAtPressure.of(rise, HALF_CUBIC_METRE, bar(5))
                                .flow()
                                .orElseThrow()
                                .byHand()))
                .isCloseTo(1, within(1e-4));
        assertThat(rise.averaged(20_000)).isEqualTo(rise);
    }

    /** Over a narrow band the growth of the content is what M7 finds between its ends. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.6})
    void agreesWithTheBalanceOverANarrowBand(double humidity) {
        var station = AbsolutePressure.of(1, BAR);
        var intake = new Intake(station, Temperature.of(20, CELSIUS), new RelativeHumidity(humidity));
        var air = Temperature.of(35, CELSIUS);
        for (double p : new double[] {0.3, 7}) {
            var low = ReceiverState.of(bar(p - 0.001).above(station), air, intake, Compressibility.DRY_AIR);
            var high = ReceiverState.of(bar(p + 0.001).above(station), air, intake, Compressibility.DRY_AIR);
            double expected = FreeAir.byBalance(new VesselVolume(1), new Elapsed(200), intake, low, high)
                    .cubicMetresPerSecond();

            double growth = ShutVolume.growth(bar(p).above(station), air, intake, Compressibility.DRY_AIR);

            assertThat(growth * intake.temperature().kelvin() / intake.dryPa()).isCloseTo(expected, within(1e-12));
        }
    }

    @Test
    void takesTheReceiverAirIntoAccount() {
        var warm = new ShutVolume(
                HALF_CUBIC_METRE.volume(),
                HALF_CUBIC_METRE.intake(),
                Temperature.of(40, CELSIUS),
                Compressibility.IDEAL);
        var unknown = new ShutVolume(HALF_CUBIC_METRE.volume(), HALF_CUBIC_METRE.intake(), null, Compressibility.IDEAL);
        PressureRise rise = PressureRise.of(steady(200, 3, 0.02));

        FlowAtPressure flow = FlowAtPressure.of(rise, warm, bar(5)).flow().orElseThrow();
        FlowAtPressure byHand = FlowAtPressure.of(rise, unknown, bar(5)).flow().orElseThrow();

        double cold = Temperature.of(20, CELSIUS).kelvin();
        assertThat(flow.best().over(flow.byHand()))
                .isCloseTo(cold / Temperature.of(40, CELSIUS).kelvin(), within(1e-12));
        assertThat(byHand.freeAir()).isNull();
        assertThat(byHand.best()).isEqualTo(flow.byHand());
    }

    /** Student's t with 6 degrees is 2.4469 at 95 %; with a fit alone the degrees would be 6, with exact parts more. */
    @Test
    void widensItsIntervalByWhatElseIsUnsure() {
        FlowAtPressure flow = at(steady(9, 3, 0.4), 5).flow().orElseThrow();

        FlowAtPressure.Interval alone = flow.interval(0, 0.95);
        FlowAtPressure.Interval wide = flow.interval(0.05, 0.95);

        assertThat(flow.degreesOfFreedom()).isEqualTo(6);
        assertThat(alone.high().over(flow.best()) - 1).isGreaterThan(1.95 * flow.relativeU());
        assertThat(wide.high().over(flow.best()) - 1).isCloseTo(1.96 * 0.05, within(2e-3));
        assertThat(wide.low().over(flow.best())).isCloseTo(2 - wide.high().over(flow.best()), within(1e-12));
    }

    /** e = 0.16 bar of 16, window 4 bar: 0.16/3 · √(1/256 + 2/16) = 1.91485 %. By hand. */
    @Test
    void knowsWhatTheGaugeAdds() {
        var gauge = new GaugeAccuracy(PressureDifference.of(16, BAR), 0.01, PressureDifference.of(0.1, BAR), List.of());
        var flow = new FlowAtPressure(bar(7), new FlowRate(0.01), null, 0.01, 6, 0.1, 2, 9, bar(5), bar(9));

        assertThat(flow.relativeGauge(gauge)).isCloseTo(0.0191485, within(5e-8));
    }

    @Test
    void carriesAKnownFlowToAnotherPressure() {
        List<TimedPressure> bending = IntStream.range(0, 100)
                .mapToObj(i -> point(i, 3 + 0.08 * i - 0.0002 * i * i))
                .toList();
        FlowAtPressure low = at(bending, 5).flow().orElseThrow();
        FlowAtPressure high = at(bending, 8).flow().orElseThrow();

        FlowRate scaled = high.scaled(low, new FlowRate(0.012));

        assertThat(scaled.cubicMetresPerSecond())
                .isCloseTo(0.012 * high.byHand().over(low.byHand()), within(1e-12))
                .isLessThan(0.012);
    }

    @Test
    void tellsFlowsAlongTheWholeRise() {
        PressureRise rise = PressureRise.of(steady(200, 3, 0.02));

        List<FlowAtPressure> flows = FlowAtPressure.along(rise, HALF_CUBIC_METRE, 5);

        assertThat(flows).hasSize(5);
        assertThat(flows)
                .isSortedAccordingTo(
                        Comparator.comparingDouble(flow -> flow.at().pascals()));
        assertThat(flows)
                .allSatisfy(flow -> assertThat(flow.byHand().cubicMetresPerSecond())
                        .isCloseTo(0.5 * 0.02e5 / 1.01325e5, within(2e-4)));
        assertThat(FlowAtPressure.along(PressureRise.of(List.of()), HALF_CUBIC_METRE, 5))
                .isEmpty();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> FlowAtPressure.along(PressureRise.of(List.of()), HALF_CUBIC_METRE, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TimedPressure(Double.NaN, bar(1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        new ShutVolume(new VesselVolume(0), HALF_CUBIC_METRE.intake(), null, Compressibility.IDEAL))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
