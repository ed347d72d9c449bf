package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;

class OutputLineTests {

    private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);

    @Test
    void hasNoLineBelowThreeTests() {
        for (int n = 0; n < 3; n++) {
            OutputLine line = OutputLine.of(yearly(0.01, 100, 90, 80).subList(0, n));

            assertThat(line.direction()).isEqualTo(Direction.NONE_YET);
            assertThat(line.yearlyChange()).isEmpty();
            assertThat(line.at(FIRST)).isEmpty();
            assertThat(line.relativeUncertaintyAt(FIRST)).isEmpty();
            assertThat(line.count()).isEqualTo(n);
        }
    }

    @Test
    void hasNoLineWhenAllTestsAreOfOneDay() {
        OutputLine line = OutputLine.of(List.of(point(0, 100, 0.01), point(0, 101, 0.01), point(0, 102, 0.01)));

        assertThat(line.direction()).isEqualTo(Direction.NONE_YET);
        assertThat(line.count()).isEqualTo(3);
    }

    @Test
    void hasNoLineWhenTheChangeInAYearIsNoNumber() {
        OutputLine line = OutputLine.of(List.of(point(0, 1, 0.01), point(0, 1, 0.01), point(1, 1000, 0.01)));

        assertThat(line.direction()).isEqualTo(Direction.NONE_YET);
    }

    /** Tests four years of 365.25 days apart, 5 % lost in each year: −5 % a year by construction. */
    @Test
    void findsASteadyPercentageInTestsWithoutScatter() {
        OutputLine line = OutputLine.of(IntStream.range(0, 5)
                .mapToObj(i -> point(1461 * i, 100 * Math.pow(0.95, 4 * i), 0.02))
                .toList());

        assertThat(line.yearlyChange().orElseThrow().percent()).isCloseTo(-5, within(1e-11));
        assertThat(line.direction()).isEqualTo(Direction.FALLING);
        assertThat(line.at(FIRST.plusDays(1461)).orElseThrow().in(FlowUnit.CFM))
                .isCloseTo(100 * Math.pow(0.95, 4), within(1e-10));
    }

    @Test
    void callsTheOppositeWayRising() {
        assertThat(OutputLine.of(yearly(0.01, 80, 90, 100)).direction()).isEqualTo(Direction.RISING);
    }

    @Test
    void cannotTellTheDirectionFromUncertainTests() {
        assertThat(OutputLine.of(yearly(0.10, 100, 97, 98)).direction()).isEqualTo(Direction.CANNOT_BE_TOLD);
    }

    @Test
    void believesScatterThatIsLargerThanStated() {
        OutputLine line = OutputLine.of(yearly(0.001, 100, 80, 100, 80, 95, 78));

        assertThat(line.scattersMoreThanStated()).isTrue();
        assertThat(line.direction()).isEqualTo(Direction.CANNOT_BE_TOLD);
    }

    @Test
    void doesNotHangOnTheOrderOfTheTests() {
        List<OutputPoint> points = yearly(0.02, 100, 97, 98, 92, 93);
        List<OutputPoint> reversed = new ArrayList<>(points);
        Collections.reverse(reversed);

        assertThat(OutputLine.of(reversed).yearlyChange())
                .isEqualTo(OutputLine.of(points).yearlyChange());
    }

    @Test
    void keepsTheYearlyChangeWhenEveryFlowIsWrongByOneFactor() {
        YearlyChange change =
                OutputLine.of(yearly(0.02, 100, 97, 98, 92)).yearlyChange().orElseThrow();

        YearlyChange scaled = OutputLine.of(yearly(0.02, 105, 101.85, 102.9, 96.6))
                .yearlyChange()
                .orElseThrow();

        assertThat(scaled.percent()).isCloseTo(change.percent(), within(1e-11));
        assertThat(scaled.standardUncertainty()).isCloseTo(change.standardUncertainty(), within(1e-11));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -20})
    void refusesAFlowThatIsNotAboveZero(double cfm) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> point(0, cfm, 0.02))
                .withMessageContaining("flow");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.01, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAnUncertaintyThatIsNotAboveZero(double relativeU) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> point(0, 20, relativeU))
                .withMessageContaining("relativeU");
    }

    private static List<OutputPoint> yearly(double relativeU, double... cfm) {
        return IntStream.range(0, cfm.length)
                .mapToObj(i -> point(365 * i, cfm[i], relativeU))
                .toList();
    }

    private static OutputPoint point(int day, double cfm, double relativeU) {
        return new OutputPoint(FIRST.plusDays(day), FlowRate.of(cfm, FlowUnit.CFM), relativeU);
    }
}
