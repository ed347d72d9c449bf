package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.LITRE_PER_MINUTE;
import static plantair.quantity.PressureUnit.BAR;
import static plantair.quantity.TemperatureUnit.CELSIUS;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.GaugePressure;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;
import plantair.statistics.Repeats;

/** Multi-point flow against figures worked out apart, and against the flow that the simulated readings were made with. */
class FlowAtPressureReferenceTests {

    private static final double STATION_BAR = 1.01325;

    static final ShutVolume HALF_CUBIC_METRE = new ShutVolume(
            new VesselVolume(0.5),
            new Intake(AbsolutePressure.of(STATION_BAR, BAR), Temperature.of(20, CELSIUS), new RelativeHumidity(0)),
            Temperature.of(20, CELSIUS),
            Compressibility.IDEAL);

    private static PressureRise read(String file) {
        return PressureRise.of(ReferenceRows.read(file).rows().stream()
                .map(row -> new TimedPressure(
                        ReferenceRows.number(row, "t_s"),
                        GaugePressure.of(ReferenceRows.number(row, "p_bar_gauge"), BAR)))
                .toList());
    }

    private static FlowAtPressure fit(String file, double bar, double halfPa, int degree) {
        var at = GaugePressure.of(bar, BAR);
        PressureRise rise = read(file);
        CurveWindow window = CurveWindow.of(rise.points(), at, halfPa);
        return FlowAtPressure.of(rise, HALF_CUBIC_METRE, at, window, degree)
                .flow()
                .orElseThrow();
    }

    /**
     * Own simulation, fitted apart with numpy and R. Half of the last digit printed; the last row is the program's own choice
     * of window, worked out with numpy alone.
     */
    @ParameterizedTest
    @CsvSource({
        "multipoint_laps.csv, 1e6, 2, 13, 685.6773, 0.000712, 0.13235",
        "multipoint_laps.csv, 1e6, 3, 13, 686.8462, 0.000235, 0.03443",
        "multipoint_log.csv, 1e6, 2, 48, 687.7382, 0.003590, 0.70571",
        "multipoint_log.csv, 1e6, 3, 48, 686.7838, 0.005080, 0.71246",
        "multipoint_laps.csv, 2e5, 2, 9, 685.8397, 0.000438, 0.07324",
        "multipoint_log.csv, 2e5, 2, 25, 685.7533, 0.006522, 0.77769"
    })
    void agreesWithFitsMadeApart(
            String file, double halfPa, int degree, int points, double flow, double relative, double scatter) {
        FlowAtPressure found = fit(file, 7, halfPa, degree);

        assertThat(found.points()).isEqualTo(points);
        assertThat(found.byHand().in(LITRE_PER_MINUTE)).isCloseTo(flow, within(5.1e-5));
        assertThat(found.relativeFit()).isCloseTo(relative, within(5.1e-7));
        assertThat(found.scatterSeconds()).isCloseTo(scatter, within(5.1e-6));
        assertThat(found.freeAir()).isNotNull();
        assertThat(found.freeAir().over(found.byHand())).isCloseTo(1, within(1e-12));
    }

    @Test
    void takesTheWindowAndTheDegreeByItself() {
        var seven = GaugePressure.of(7, BAR);

        var laps = FlowAtPressure.of(read("multipoint_laps.csv"), HALF_CUBIC_METRE, seven);

        assertThat(laps.flow().orElseThrow()).isEqualTo(fit("multipoint_laps.csv", 7, 2e5, 2));
        assertThat(new CurveWindow(read("multipoint_laps.csv").points(), 3e5, 9e5).degree())
                .isEqualTo(3);
    }

    /** Times of the simulated fill every 0.5 bar, to 1e-6 s: the curve itself is within its 0.25 %. */
    @ParameterizedTest
    @CsvSource({"4, 806.318", "6, 725.677", "7, 687.418", "8, 650.249"})
    void findsTheFlowThatTheFillWasMadeWith(double bar, double truth) {
        List<TimedPressure> points = DoubleStream.iterate(1, p -> p <= 10, p -> p + 0.5)
                .mapToObj(p -> new TimedPressure(timeTo(p), GaugePressure.of(p, BAR)))
                .toList();

        FlowAtPressure found = FlowAtPressure.of(PressureRise.of(points), HALF_CUBIC_METRE, GaugePressure.of(bar, BAR))
                .flow()
                .orElseThrow();

        assertThat(flow(bar)).isCloseTo(truth, within(5e-4));
        assertThat(found.byHand().in(LITRE_PER_MINUTE) / truth).isCloseTo(1, within(FlowAtPressure.MODEL_U));
    }

    /** Printed with the simulation: 132.446 s to 4 bar, 251.796 s to 7 bar. */
    @Test
    void fillsAsTheSimulationDid() {
        assertThat(timeTo(4)).isCloseTo(132.446, within(5e-4));
        assertThat(timeTo(7)).isCloseTo(251.796, within(5e-4));
    }

    /**
     * Drawn laps every 0.5 bar, the clock stopped with 0.3 s of error at a needle that is 0.03 bar off, seed 11: an own simulation made apart found a bias of −0.22 % and a
     * deviation of 0.78 % beside 0.76 % stated, 95 of 100 intervals holding the true flow. Laps of 0.5 to 10 bar here.
     */
    @Test
    void statesTheScatterOfDrawnLaps() {
        var random = new Random(11);
        List<TimedPressure> exact = DoubleStream.iterate(0.5, p -> p <= 10, p -> p + 0.5)
                .mapToObj(p -> new TimedPressure(timeTo(p), GaugePressure.of(p, BAR)))
                .toList();

        Drawn drawn = Drawn.of(
                2000,
                () -> exact.stream()
                        .map(mark -> new TimedPressure(
                                mark.seconds() + 0.3 * random.nextGaussian() + late(mark, 0.03 * random.nextGaussian()),
                                mark.pressure()))
                        .toList());

        assertThat(drawn.ratios().mean()).isCloseTo(-0.0022, within(0.0006));
        assertThat(drawn.ratios().standardDeviation()).isCloseTo(0.0078, within(0.0004));
        assertThat(drawn.stated()).isCloseTo(0.0076, within(0.0003));
        assertThat(drawn.held()).isBetween(0.935, 0.985);
    }

    /**
     * A drawn log every 5 s, 0.02 bar of error, seed 12, whole fill to 10 bar: an own simulation made apart found a bias of
     * −0.16 %, a deviation of 0.28 % beside 0.29 % stated, 92 of 100 intervals holding the true flow without the model's part.
     */
    @Test
    void statesTheScatterOfDrawnLogs() {
        var random = new Random(12);
        List<Double> exact = new ArrayList<>();
        double bar = 0;
        for (int second = 0; second < 390; second++) {
            if (second % 5 == 0) {
                exact.add(bar);
            }
            double half = bar + flow(bar) / 60 / 500 * STATION_BAR / 2;
            bar += flow(half) / 60 / 500 * STATION_BAR;
        }

        Drawn drawn = Drawn.of(
                1000,
                () -> IntStream.range(0, exact.size())
                        .mapToObj(i -> new TimedPressure(
                                5.0 * i, GaugePressure.of(exact.get(i) + 0.02 * random.nextGaussian(), BAR)))
                        .toList());

        assertThat(drawn.ratios().mean()).isCloseTo(-0.0016, within(0.0006));
        assertThat(drawn.ratios().standardDeviation()).isCloseTo(0.0028, within(0.0003));
        assertThat(drawn.stated()).isCloseTo(0.0029, within(0.0003));
        assertThat(drawn.held()).isBetween(0.935, 0.99);
    }

    /** Flows at 7 bar over the true one less 1, mean of the stated u(a1)/a1, part of the intervals that hold the true flow. */
    private record Drawn(Repeats ratios, double stated, double held) {

        static Drawn of(int runs, Supplier<List<TimedPressure>> readings) {
            double truth = flow(7);
            double[] ratios = new double[runs];
            double stated = 0;
            double held = 0;
            for (int run = 0; run < runs; run++) {
                FlowAtPressure found = FlowAtPressure.of(
                                PressureRise.of(readings.get()), HALF_CUBIC_METRE, GaugePressure.of(7, BAR))
                        .flow()
                        .orElseThrow();
                FlowAtPressure.Interval interval = found.interval(0, 0.95);
                boolean holds = interval.low().in(LITRE_PER_MINUTE) <= truth
                        && truth <= interval.high().in(LITRE_PER_MINUTE);
                ratios[run] = found.byHand().in(LITRE_PER_MINUTE) / truth - 1;
                stated += found.relativeFit() / runs;
                held += holds ? 1.0 / runs : 0;
            }
            return new Drawn(Repeats.of(ratios), stated, held);
        }
    }

    /** Seconds by which a mark is passed later when the needle is off by some bar. */
    private static double late(TimedPressure mark, double bar) {
        return 500 / STATION_BAR * 60 * bar / flow(mark.pressure().in(BAR));
    }

    private static double flow(double bar) {
        double ratio = (bar + STATION_BAR) / STATION_BAR;
        return 1000 * (1 - 0.08 * (Math.pow(ratio, 1 / 1.3) - 1));
    }

    private static double timeTo(double bar) {
        int steps = 2000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += 1 / flow(bar * (i + 0.5) / steps);
        }
        return 500 / STATION_BAR * 60 * sum * bar / steps;
    }
}
