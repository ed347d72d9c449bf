package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.statistics.ReferenceTable;

/** Source, status and tolerance stand in the head of reference/statistics/nine_tests.csv. */
class OutputLineReferenceTests {

    private final List<OutputPoint> points = ReferenceTable.read("nine_tests.csv").rows().stream()
            .map(row -> new OutputPoint(
                    LocalDate.parse(row[0]),
                    FlowRate.of(Double.parseDouble(row[1]), FlowUnit.LITRE_PER_MINUTE),
                    Double.parseDouble(row[2]) / 100))
            .toList();

    /** R: slope −0.022825270, pooled standard error 0.00643265, 11 degrees of freedom, decline 0.86297 to 3.63079 %. */
    @Test
    void agreesWithRsWeightedLineAndThePooledInterval() {
        YearlyChange change = OutputLine.of(points).yearlyChange().orElseThrow();

        assertThat(change.percent()).isCloseTo(100 * Math.expm1(-0.022825270), within(5e-8));
        assertThat(change.standardUncertainty()).isCloseTo(100 * Math.exp(-0.022825270) * 0.00643265, within(5e-7));
        assertThat(change.lowPercent()).isCloseTo(-3.63079, within(5e-6));
        assertThat(change.highPercent()).isCloseTo(-0.86297, within(5e-6));
    }

    /** R: a(0) 6.028794517 for q in L/min; 385.5049 L/min at 3.252567 a, 2024-06-15. */
    @Test
    void agreesWithRsFittedFlow() {
        OutputLine line = OutputLine.of(points);

        assertThat(flow(line, "2021-03-15")).isCloseTo(Math.exp(6.028794517), within(5e-7));
        assertThat(flow(line, "2024-06-15")).isCloseTo(385.5049, within(5e-5));
    }

    /**
     * The prediction interval that R gives for a new test of 2.5 % on 2024-06-15 is 367.1735 to 404.7515 L/min; it holds the
     * uncertainty of the line: half-width² = t² (u_line² + s² 0.025²), t 2.200985, s 0.678742.
     */
    @Test
    void agreesWithTheUncertaintyInsideRsPredictionInterval() {
        double halfWidth = Math.log(404.7515 / 367.1735) / 2;
        double newTest = 0.678742 * 0.025;

        double u = OutputLine.of(points)
                .relativeUncertaintyAt(LocalDate.parse("2024-06-15"))
                .orElseThrow();

        assertThat(Math.sqrt(u * u + newTest * newTest) * 2.200985).isCloseTo(halfWidth, within(3e-7));
    }

    @Test
    void tellsTheDirectionFromThatInterval() {
        OutputLine line = OutputLine.of(points);

        assertThat(line.direction()).isEqualTo(Direction.FALLING);
        assertThat(line.scattersMoreThanStated()).isFalse();
        assertThat(line.count()).isEqualTo(9);
    }

    private static double flow(OutputLine line, String date) {
        return line.at(LocalDate.parse(date)).orElseThrow().in(FlowUnit.LITRE_PER_MINUTE);
    }
}
