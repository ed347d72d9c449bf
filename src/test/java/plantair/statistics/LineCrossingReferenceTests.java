package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.statistics.LineCrossing.Kind;

/** Sources, status and tolerances stand in the head of each table under reference/statistics. */
class LineCrossingReferenceTests {

    private static final double NINE_TESTS_S = 0.678742;

    /** Read backwards the calibration line rises; turned over it falls, and x stays. */
    @ParameterizedTest
    @CsvSource({
        "15, 1, 6.093810, 0.966872, 10.837436",
        "90, 1, 43.93983, 39.195225, 49.068430",
        "90, 5, 43.93983, 40.941537, 47.322119"
    })
    void agreesWithTheCalibrationLineReadBackwards(
            double y, int readings, double best, double earliest, double latest) {
        ReferenceTable massart = ReferenceTable.read("massart_calibration.csv");
        double[] turned = Arrays.stream(massart.column("y")).map(each -> -each).toArray();
        double[] ones = {1, 1, 1, 1, 1, 1};
        double s = WeightedLine.fit(massart.column("x"), turned, ones).birgeRatio();
        double[] u = {s, s, s, s, s, s};
        LineFit line = WeightedLine.fit(massart.column("x"), turned, u);

        LineCrossing crossing = LineCrossing.of(line, Student.coverageFactor(4, 0.95), s / Math.sqrt(readings), -y);

        assertThat(crossing.kind()).isEqualTo(Kind.BOUNDED);
        assertThat(crossing.best()).isCloseTo(best, within(5e-6));
        assertThat(crossing.earliest()).isCloseTo(earliest, within(5e-7));
        assertThat(crossing.latest()).isCloseTo(latest, within(5e-7));
    }

    @ParameterizedTest
    @CsvSource({"15, 5.865367, 5e-7", "90, 44.06025, 5e-6"})
    void agreesWithTheWeightedCalibrationLineReadBackwards(double y, double best, double tolerance) {
        ReferenceTable massart = ReferenceTable.read("massart_calibration.csv");
        double[] turned = Arrays.stream(massart.column("y")).map(each -> -each).toArray();
        double[] u = Arrays.stream(massart.column("weight"))
                .map(w -> 1 / Math.sqrt(w))
                .toArray();

        LineCrossing crossing = LineCrossing.of(WeightedLine.fit(massart.column("x"), turned, u), 2, 0, -y);

        assertThat(crossing.best()).isCloseTo(best, within(tolerance));
    }

    /** Own nine tests, 370 and 350 L/min; figures by a separate program with R's Student factors, 11 degrees of freedom. */
    @ParameterizedTest
    @CsvSource({
        "370, 0.95, 5.05105, 3.52562, 11.32363",
        "370, 0.80, 5.05105, 3.95278, 7.46422",
        "350, 0.95, 7.48562, 5.05622, 17.70717",
        "350, 0.80, 7.48562, 5.72880, 11.40077"
    })
    void agreesWithTheCrossingOfNineTests(double limit, double confidence, double best, double low, double high) {
        LineFit line = nineTests();

        LineCrossing crossing = LineCrossing.of(line, Student.coverageFactor(11, confidence), 0, Math.log(limit));

        assertThat(crossing.kind()).isEqualTo(Kind.BOUNDED);
        assertThat(crossing.best()).isCloseTo(best, within(5e-6));
        assertThat(crossing.earliest()).isCloseTo(low, within(2e-5));
        assertThat(crossing.latest()).isCloseTo(high, within(1e-4));
    }

    private static LineFit nineTests() {
        ReferenceTable tests = ReferenceTable.read("nine_tests.csv");
        double[] days = {0, 97, 179, 303, 386, 567, 701, 856, 1030};
        return WeightedLine.fit(
                Arrays.stream(days).map(day -> day / 365.25).toArray(),
                Arrays.stream(tests.column("q_L_per_min")).map(Math::log).toArray(),
                Arrays.stream(tests.column("u_random_percent"))
                        .map(percent -> NINE_TESTS_S * percent / 100)
                        .toArray());
    }
}
