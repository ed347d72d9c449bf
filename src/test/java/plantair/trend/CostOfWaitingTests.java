package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;
import plantair.trend.CostOfWaiting.Input;
import plantair.trend.CostOfWaiting.Inputs;

class CostOfWaitingTests {

    private static final Inputs ALL = new Inputs(6_000.0, kilowatts(20), 0.12);
    private static final Inputs NONE = new Inputs(null, null, null);

    /** 10, 15 and 20 % lost are 11, 18 and 25 % more energy for the same air. Source: own arithmetic, 1/r − 1. */
    @ParameterizedTest
    @CsvSource({"0.90, 11.1111", "0.85, 17.6471", "0.80, 25.0000"})
    void raisesTheEnergyForTheSameAir(double ratio, double percent) {
        CostOfWaiting cost = waiting(ratio, 0.01, NONE).orElseThrow();

        assertThat(100 * cost.energyPerAir().value()).isCloseTo(percent, within(5e-5));
        assertThat(cost.lostPart().value()).isCloseTo(1 - ratio, within(1e-15));
    }

    /** A year of 100 cfm at 20 kW for 100 cfm and 0.12 for a kilowatt hour. Source: own arithmetic. */
    @ParameterizedTest
    @CsvSource({"2000, 4800", "6000, 14400", "8760, 21024"})
    void knowsWhatAYearOfRunningTakes(double hours, double money) {
        assertThat(0.12 * CostOfWaiting.kilowattHours(kilowatts(20), hours)).isCloseTo(money, withinPercentage(1e-12));
    }

    /** The same machine worn to 85 %: 15 % of the 6,000 h, of the 120,000 kWh, of the 14,400. */
    @Test
    void costsTheLostPartOfTheYear() {
        CostOfWaiting cost = waiting(0.85, 0.02, ALL).orElseThrow();

        assertThat(cost.hours().value()).isCloseTo(900, withinPercentage(1e-12));
        assertThat(cost.kilowattHours().value()).isCloseTo(18_000, withinPercentage(1e-12));
        assertThat(cost.money().value()).isCloseTo(2_160, withinPercentage(1e-12));
    }

    /** By numerical derivative: what a change of r by its uncertainty does to each figure. */
    @Test
    void carriesTheUncertaintyOfTheRatio() {
        double u = 1e-6;
        CostOfWaiting cost = waiting(0.85, u, ALL).orElseThrow();
        CostOfWaiting better = waiting(0.85 + u, u, ALL).orElseThrow();

        assertThat(cost.lostPart().standardUncertainty()).isCloseTo(u, withinPercentage(1e-6));
        assertThat(cost.energyPerAir().standardUncertainty())
                .isCloseTo(cost.energyPerAir().value() - better.energyPerAir().value(), withinPercentage(1e-3));
        assertThat(cost.hours().standardUncertainty())
                .isCloseTo(cost.hours().value() - better.hours().value(), withinPercentage(1e-3));
        assertThat(cost.money().standardUncertainty())
                .isCloseTo(cost.money().value() - better.money().value(), withinPercentage(1e-3));
    }

    /** 1.645 u on the safe side, the one-sided 95 % of the normal distribution (tables, from memory). */
    @ParameterizedTest
    @CsvSource({"0.97, 0.0183, false", "0.97, 0.0181, true", "1.00, 0.001, false", "1.04, 0.001, false"})
    void saysNothingOfADifferenceWithinItsUncertainty(double ratio, double u, boolean told) {
        assertThat(waiting(ratio, u, ALL).isPresent()).isEqualTo(told);
    }

    @Test
    void leavesOutWhatIsNotKnownAndNamesIt() {
        var hoursOnly = new Inputs(6_000.0, null, 0.12);
        var noTariff = new Inputs(6_000.0, kilowatts(20), null);

        assertThat(waiting(0.85, 0.02, NONE).orElseThrow().hours()).isNull();
        assertThat(waiting(0.85, 0.02, hoursOnly).orElseThrow().hours()).isNotNull();
        assertThat(waiting(0.85, 0.02, hoursOnly).orElseThrow().money()).isNull();
        assertThat(waiting(0.85, 0.02, noTariff).orElseThrow().kilowattHours()).isNotNull();
        assertThat(waiting(0.85, 0.02, noTariff).orElseThrow().money()).isNull();
        assertThat(NONE.missing()).containsExactly(Input.LOADED_HOURS, Input.INPUT_POWER, Input.TARIFF);
        assertThat(hoursOnly.missing()).containsExactly(Input.INPUT_POWER);
        assertThat(ALL.missing()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.5, Double.NaN})
    void refusesARatioThatIsNotAboveZero(double ratio) {
        assertThatIllegalArgumentException().isThrownBy(() -> waiting(ratio, 0.01, ALL));
    }

    private static Optional<CostOfWaiting> waiting(double ratio, double u, Inputs inputs) {
        return CostOfWaiting.of(new BaselineComparison(ratio, u / ratio), inputs);
    }

    private static Power kilowatts(double value) {
        return Power.of(value, PowerUnit.KW);
    }
}
