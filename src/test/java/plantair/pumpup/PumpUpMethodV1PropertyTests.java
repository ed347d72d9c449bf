package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VolumeUnit;

/** What holds for every test, tried on random ones; the seed is the parameter, so a failure can be repeated. */
class PumpUpMethodV1PropertyTests {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    /** One random test in SI, which can be built again with a change. */
    private static final class Drawn {

        final double litres;
        final double start;
        final double stop;
        final double seconds;
        final double station;
        final double intake;
        final double humidity;
        final double startAir;
        final double stopAir;

        Drawn(long seed) {
            var random = new Random(seed);
            litres = 20 + 5000 * random.nextDouble();
            start = 8 * random.nextDouble();
            stop = start + 0.5 + 6 * random.nextDouble();
            seconds = 5 + 900 * random.nextDouble();
            station = 0.7 + 0.35 * random.nextDouble();
            intake = -5 + 45 * random.nextDouble();
            humidity = random.nextDouble();
            startAir = intake + 20 * random.nextDouble();
            stopAir = startAir + 3 * random.nextDouble();
        }

        SampleReadings metric(double volumeFactor, double timeFactor) {
            return SampleReadings.in(PressureUnit.BAR, TemperatureUnit.CELSIUS)
                    .volume(litres * volumeFactor, VolumeUnit.LITRE)
                    .barometer(station)
                    .intake(intake)
                    .humidity(humidity)
                    .run(start, stop, seconds * timeFactor, startAir, stopAir);
        }

        SampleReadings american() {
            double psiPerBar = 1e5 * 0.0254 * 0.0254 / 4.4482216152605;
            return SampleReadings.in(PressureUnit.PSI, TemperatureUnit.FAHRENHEIT)
                    .volume(litres / 3.785411784, VolumeUnit.US_GAL)
                    .barometer(station * psiPerBar)
                    .intake(fahrenheit(intake))
                    .humidity(humidity)
                    .run(start * psiPerBar, stop * psiPerBar, seconds, fahrenheit(startAir), fahrenheit(stopAir));
        }

        private static double fahrenheit(double celsius) {
            return celsius * 1.8 + 32;
        }
    }

    /** Tolerance 1e-9 relative: roundings, magnified where a narrow band subtracts near numbers. */
    @ParameterizedTest
    @MethodSource("seeds")
    void doesNotMindTheUnits(long seed) {
        var drawn = new Drawn(seed);

        PumpUpResult metric = drawn.metric(1, 1).result();
        PumpUpResult american = drawn.american().result();

        assertThat(si(american.freeAir())).isCloseTo(si(metric.freeAir()), withinPercentage(1e-7));
        assertThat(si(american.handMethod())).isCloseTo(si(metric.handMethod()), withinPercentage(1e-7));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void followsVolumeAndTimeInProportion(long seed) {
        var drawn = new Drawn(seed);
        double flow = si(drawn.metric(1, 1).result().freeAir());

        assertThat(si(drawn.metric(2, 1).result().freeAir())).isCloseTo(2 * flow, withinPercentage(1e-10));
        assertThat(si(drawn.metric(1, 2).result().freeAir())).isCloseTo(flow / 2, withinPercentage(1e-10));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverGivesMoreThanTheHandFigureWithoutAirTemperature(long seed) {
        var drawn = new Drawn(seed);

        PumpUpResult result =
                drawn.metric(1, 1).humidity(0).air(AirTemperature.NOT_MEASURED).ideal();

        double ratio = si(result.handMethod()) / si(result.freeAir());
        double insulated = 1.4 * (drawn.intake + 20 + 273.15) / (drawn.intake + 273.15);
        assertThat(ratio).isBetween(1.0, insulated);
        assertThat(result.runs().get(0).warming().factor()).isCloseTo(ratio, withinPercentage(1e-10));
    }

    /** Dry mass delivered does not depend on the basis it is told on. */
    @ParameterizedTest
    @MethodSource("seeds")
    void tellsTheSameMassOnEveryBasis(long seed) {
        SampleReadings readings = new Drawn(seed).metric(1, 1);
        PumpUpResult result = readings.result();
        Intake intake = readings.readings().intake();
        double atIntake =
                si(result.freeAir()) * intake.dryPa() / intake.temperature().kelvin();

        assertThat(result.standardFlows()).hasSize(5).allSatisfy(standard -> {
            var state = standard.basis().state().orElseThrow();
            Intake reference = new Intake(state.pressure(), state.temperature(), state.humidity());
            double mass = si(standard.flow())
                    * reference.dryPa()
                    / reference.temperature().kelvin();
            assertThat(mass).isCloseTo(atIntake, withinPercentage(1e-10));
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void givesOneDigitForDigitAnswer(long seed) {
        var drawn = new Drawn(seed);

        assertThat(drawn.metric(1, 1).result()).isEqualTo(drawn.metric(1, 1).result());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void statesAnUncertaintyOfItsParts(long seed) {
        Uncertainty uncertainty = new Drawn(seed)
                .metric(1, 1)
                .rating(7, 15, FlowUnit.LITRE_PER_SECOND, FlowBasis.INTAKE)
                .result()
                .uncertainty();

        double squares = uncertainty.components().stream()
                .mapToDouble(component -> component.relative() * component.relative())
                .sum();
        assertThat(uncertainty.components())
                .isSortedAccordingTo((a, b) -> Double.compare(b.relative(), a.relative()))
                .extracting(Uncertainty.Component::source)
                .doesNotHaveDuplicates();
        // no test is surer than its operation of 1 %, nor than a gauge of which nothing is known
        assertThat(uncertainty.random()).isGreaterThan(0.01);
        assertThat(uncertainty.shared()).isGreaterThan(0.03);
        assertThat(uncertainty.combined()).isCloseTo(Math.sqrt(squares), withinPercentage(1e-10));
    }

    private static double si(FlowRate flow) {
        return flow.cubicMetresPerSecond();
    }
}
