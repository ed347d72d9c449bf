package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.VolumeUnit;

/**
 * The working is enough to follow the result by hand. Each step is done again here from its own figures, or those of the
 * steps it names, by code that shares nothing with the program.
 */
class WorkingTests {

    static Stream<PumpUpReadings> readings() {
        return Stream.of(
                measured().readings(),
                SampleReadings.good()
                        .part(VolumePart.Kind.PIPE, 12, VolumeUnit.LITRE)
                        .noBarometer()
                        .elevation(850)
                        .humidityNotRead()
                        .noRuns()
                        .air(AirTemperature.NOT_MEASURED)
                        .run(4, 7, 75)
                        .run(4, 7, 75.5)
                        .readings(),
                SampleReadings.good()
                        .intake(28)
                        .humidity(0.7)
                        .noRuns()
                        .air(AirTemperature.SETTLED)
                        .settledRun(6, 9, 60, 8.7, 29)
                        .noRatings()
                        .rating(7, 14, FlowUnit.LITRE_PER_SECOND, FlowBasis.STANDARD_14_7PSIA_68F_36RH)
                        .readings(),
                leaking().readings(),
                leaking().air(AirTemperature.NOT_MEASURED).readings());
    }

    /** With a gauge that was found wrong, and a leak that is added. */
    private static SampleReadings leaking() {
        SampleReadings test = SampleReadings.good();
        return test.hold(9, 8.6, 300, StaticHold.Place.TEST_VOLUME)
                .gauge(16, 0.005, 0.05, test.error(5, 0.03), test.error(10, -0.04));
    }

    private static SampleReadings measured() {
        return SampleReadings.good()
                .part(VolumePart.Kind.PIPE, 8, VolumeUnit.LITRE)
                .part(VolumePart.Kind.WATER, 3, VolumeUnit.LITRE)
                .intake(24)
                .humidity(0.45)
                .speeds(1440, 1460)
                .noRuns()
                .run(6, 9, 64, 31, 36)
                .run(6, 9, 64.6, 32, 37)
                .run(6, 9, 64.1, 32, 36.5)
                .noRatings()
                .rating(7, 13.8, FlowUnit.LITRE_PER_SECOND, FlowBasis.NORMAL_101_325KPA_0C_DRY)
                .rating(10, 12.9, FlowUnit.LITRE_PER_SECOND, FlowBasis.NORMAL_101_325KPA_0C_DRY);
    }

    /** Tolerance 1e-10 relative: some dozen roundings of a double, with room. */
    @ParameterizedTest
    @MethodSource("readings")
    void canBeFollowedStepByStep(PumpUpReadings readings) {
        var steps = new Steps(result(readings).working());

        assertThat(steps.all()).isNotEmpty().allSatisfy(step -> {
            double own = new Calculator(steps, step).answer();
            double printed = step.figures().get(step.figures().size() - 1).si();
            assertThat(printed).as(step.equation()).isCloseTo(own, within(1e-10 * Math.abs(own) + 1e-18));
        });
    }

    @ParameterizedTest
    @MethodSource("readings")
    void endsAtTheFiguresOfTheResult(PumpUpReadings readings) {
        PumpUpResult result = result(readings);
        var steps = new Steps(result.working());

        assertThat(steps.value("M2", 0, "", "V")).isEqualTo(result.netVolume().cubicMetres());
        assertThat(steps.value("M12", 0, "", "mid"))
                .isEqualTo(result.midPressure().pascals());
        assertThat(steps.value("M19", 0, "", "q")).isEqualTo(si(result.freeAir()));
        for (RunResult run : result.runs()) {
            boolean leak = result.leak().added();
            String last = leak ? "M10-add" : run.warming() == null ? "M7" : "M9";
            String symbol = last.equals("M7") ? "q" : "free";
            assertThat(steps.value("M1", run.run(), "", "q")).isEqualTo(si(run.handMethod()));
            assertThat(steps.value(last, run.run(), "", symbol)).isCloseTo(si(run.freeAir()), within(1e-15));
        }
        for (StandardFlow standard : result.standardFlows()) {
            assertThat(steps.value("M11", 0, standard.basis().name(), "standard"))
                    .isEqualTo(si(standard.flow()));
        }
        RatingComparison rating = Objects.requireNonNull(result.rating());
        assertThat(steps.value("M13", 0, rating.basis().name(), "ratio")).isEqualTo(rating.ratio());
    }

    @Test
    void refersTheFlowToRatedSpeed() {
        PumpUpResult result = measured().result();

        assertThat(new Steps(result.working()).value("M14", 0, "", "q0")).isEqualTo(si(result.atRatedSpeed()));
    }

    @Test
    void startsWithTheReadingsAsTheyWere() {
        var steps = new Steps(measured().result().working());

        assertThat(steps.value("M2-part", 0, "PIPE", "v")).isEqualTo(0.008);
        assertThat(steps.value("M2-less", 0, "WATER", "v")).isEqualTo(0.003);
        assertThat(steps.value("M1", 2, "", "p1")).isEqualTo(6e5);
        assertThat(steps.value("M1", 2, "", "p2")).isEqualTo(9e5);
        assertThat(steps.value("M1", 2, "", "t")).isEqualTo(64.6);
        assertThat(steps.value("M6-start", 2, "", "T")).isEqualTo(305.15);
        assertThat(steps.value("M6-stop", 2, "", "T")).isEqualTo(310.15);
    }

    @Test
    void endsAtTheRunsWhereTheyAreNotAveraged() {
        List<WorkingStep> working = SampleReadings.good()
                .noRuns()
                .run(6, 9, 50)
                .run(6, 9, 55)
                .run(6, 9, 60)
                .result()
                .working();

        assertThat(working)
                .extracting(WorkingStep::equation)
                .contains("M7", "M12")
                .doesNotContain("M19", "M11", "M13");
    }

    private static PumpUpResult result(PumpUpReadings readings) {
        return new PumpUpMethodV1(Compressibility.DRY_AIR).evaluate(readings);
    }

    private static double si(FlowRate flow) {
        return flow.cubicMetresPerSecond();
    }

    /** Finds figures in a working. */
    private record Steps(List<WorkingStep> all) {

        double value(String equation, int run, String label, String symbol) {
            return all.stream()
                    .filter(step -> step.equation().equals(equation)
                            && step.run() == run
                            && step.label().equals(label))
                    .map(step -> figure(step, symbol))
                    .findFirst()
                    .orElseThrow();
        }

        double ratio() {
            return all.stream()
                    .filter(step -> step.equation().equals("M13"))
                    .mapToDouble(step -> figure(step, "ratio"))
                    .findFirst()
                    .orElseThrow();
        }

        double sum(String equation) {
            return all.stream()
                    .filter(step -> step.equation().equals(equation))
                    .mapToDouble(step -> step.figures().get(0).si())
                    .sum();
        }

        static double figure(WorkingStep step, String symbol) {
            return step.figures().stream()
                    .filter(figure -> figure.symbol().equals(symbol))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(step.equation() + " lacks " + symbol))
                    .si();
        }
    }

    /** A hand calculator with the equations of docs/method.md. */
    private record Calculator(Steps steps, WorkingStep step) {

        double answer() {
            return switch (step.equation()) {
                case "M2-part", "M2-less" -> f("v");
                case "M2" -> steps.sum("M2-part") - steps.sum("M2-less");
                case "M3" -> 101325 * Math.pow(1 - 2.25577e-5 * f("h"), 5.25588);
                case "M3-read" -> steps.value("M5", 0, "", "Pa");
                case "M4" -> saturation(f("Ta"));
                case "M5" -> dryIntake();
                case "M1" -> hand();
                case "M6-start", "M6-stop", "M8-stop" -> content();
                case "M0" -> corrected();
                case "M10" -> leak();
                case "M10-add" -> withLeak();
                case "M15" -> probability();
                case "M7" -> f("V") / f("t") * f("Ta") / f("dry") * (f("C2") - f("C1"));
                case "M9" -> f("q") / f("F");
                case "M12" -> mid();
                case "M19" -> mean();
                case "M14" -> f("q") * f("N0") / f("N");
                case "M11" -> f("q") * f("dry") / f("refDry") * f("Tref") / f("Ta");
                case "M13-point" -> f("rated");
                case "M13" -> rating();
                default -> throw new AssertionError("no such step: " + step.equation());
            };
        }

        private double f(String symbol) {
            return Steps.figure(step, symbol);
        }

        private static double saturation(double t) {
            return Math.exp(-5800.2206 / t
                    + 1.3914993
                    - 0.048640239 * t
                    + 4.1764768e-5 * Math.pow(t, 2)
                    - 1.4452093e-8 * Math.pow(t, 3)
                    + 6.5459673 * Math.log(t));
        }

        private double dryIntake() {
            double vapour = f("φ") * f("es");
            assertThat(f("es")).isEqualTo(steps.value("M4", 0, "", "es"));
            assertThat(f("x")).isCloseTo(vapour / f("Pa"), within(1e-15));
            return f("Pa") - vapour;
        }

        private double hand() {
            double air = f("V") * (f("p2") - f("p1")) / f("Pa");
            assertThat(f("air")).isCloseTo(air, withinPercentage(1e-8));
            return f("air") / f("t");
        }

        private double content() {
            double x = steps.value("M5", 0, "", "x");
            double station = steps.value("M5", 0, "", "Pa");
            if (!step.equation().equals("M8-stop")) {
                String gauge = step.equation().equals("M6-start") ? "p1" : "p2";
                assertThat(f("P")).isCloseTo(steps.value("M1", step.run(), "", gauge) + station, within(1e-6));
            }
            assertThat(f("es")).isCloseTo(saturation(f("T")), withinPercentage(1e-8));
            assertThat(f("D")).isCloseTo(f("P") - Math.min(x * f("P"), f("es")), withinPercentage(1e-8));
            double t = f("T");
            double virial = 34.9568 - 6687.72 / t - 2.10141e6 / Math.pow(t, 2) + 9.24746e7 / Math.pow(t, 3);
            assertThat(f("Z")).isCloseTo(1 + virial * 1e-6 * f("P") / (8.31446261815324 * t), within(1e-12));
            return f("D") / (f("Z") * t);
        }

        /** What the certificate says is not in the working; here the readings that follow are what it made of them. */
        private double corrected() {
            int run = Integer.parseInt(step.label());
            assertThat(f("p1")).isEqualTo(steps.value("M1", run, "", "p1")).isNotEqualTo(f("p1 read"));
            assertThat(f("p2")).isNotEqualTo(f("p2 read"));
            return steps.value("M1", run, "", "p2");
        }

        private double leak() {
            assertThat(f("k")).isCloseTo(Math.log(f("P1") / f("P2")) / f("t"), within(1e-15));
            double each = f("k")
                    * steps.value("M2", 0, "", "V")
                    / steps.value("M5", 0, "", "Pa")
                    * steps.value("M4", 0, "", "Ta")
                    / steps.value("M6-start", 1, "", "T");
            assertThat(f("at hold")).isCloseTo(each * (f("P1") + f("P2")) / 2, within(1e-12));
            assertThat(f("P")).isCloseTo(mid() + steps.value("M5", 0, "", "Pa"), within(1e-6));
            return each * f("P");
        }

        private double withLeak() {
            boolean factor =
                    steps.all().stream().anyMatch(other -> other.equation().equals("M9"));
            assertThat(f("leak")).isEqualTo(steps.value("M10", 0, "", "leak"));
            assertThat(f("q"))
                    .isCloseTo(
                            steps.value(factor ? "M9" : "M7", step.run(), "", factor ? "free" : "q"),
                            withinPercentage(1e-8));
            return f("q") + f("leak");
        }

        /** Normal distribution, by Simpson's rule from the limit to 10 standard uncertainties. */
        private double probability() {
            assertThat(f("ratio")).isEqualTo(steps.ratio());
            double from = (f("limit") - f("ratio")) / f("u");
            int panels = 20_000;
            double width = (10 - from) / panels;
            double sum = 0;
            for (int i = 0; i <= panels; i++) {
                double at = from + i * width;
                int weight = i == 0 || i == panels ? 1 : i % 2 == 1 ? 4 : 2;
                sum += weight * Math.exp(-at * at / 2);
            }
            return sum * width / 3 / Math.sqrt(2 * Math.PI);
        }

        private double mid() {
            return steps.all().stream()
                    .filter(other -> other.equation().equals("M1"))
                    .mapToDouble(other -> (Steps.figure(other, "p1") + Steps.figure(other, "p2")) / 2)
                    .average()
                    .orElseThrow();
        }

        private double mean() {
            String last = Stream.of("M10-add", "M9", "M7")
                    .filter(name -> steps.all().stream()
                            .anyMatch(other -> other.equation().equals(name)))
                    .findFirst()
                    .orElseThrow();
            double[] flows = steps.all().stream()
                    .filter(other -> other.equation().equals(last))
                    .mapToDouble(other -> Steps.figure(other, last.equals("M7") ? "q" : "free"))
                    .sorted()
                    .toArray();
            double mean = Arrays.stream(flows).average().orElseThrow();
            assertThat(f("n")).isEqualTo(flows.length);
            assertThat(f("spread")).isCloseTo((flows[flows.length - 1] - flows[0]) / mean, within(1e-12));
            return mean;
        }

        private double rating() {
            double measured = step.label().equals("INTAKE")
                    ? steps.value("M19", 0, "", "q")
                    : steps.value("M11", 0, step.label(), "standard");
            double speed = steps.all().stream()
                    .filter(other -> other.equation().equals("M14"))
                    .mapToDouble(other -> Steps.figure(other, "N0") / Steps.figure(other, "N"))
                    .findFirst()
                    .orElse(1);
            List<WorkingStep> points = steps.all().stream()
                    .filter(other -> other.equation().equals("M13-point"))
                    .toList();
            assertThat(f("measured")).isCloseTo(measured * speed, withinPercentage(1e-8));
            assertThat(f("expected")).isCloseTo(expected(points), withinPercentage(1e-8));
            return f("measured") / f("expected");
        }

        private double expected(List<WorkingStep> points) {
            double first = Steps.figure(points.get(0), "rated");
            if (points.size() == 1) {
                return first;
            }
            double low = Steps.figure(points.get(0), "p");
            double high = Steps.figure(points.get(1), "p");
            return first + (f("mid") - low) / (high - low) * (Steps.figure(points.get(1), "rated") - first);
        }
    }
}
