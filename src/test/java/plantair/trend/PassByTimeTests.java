package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.Temperature;
import plantair.trend.PassByTime.Run;

class PassByTimeTests {

    private static final PressureDifference RISE = new PressureDifference(2e5);

    /** By hand: 60.5/0.95 = 63.7, /0.90 = 67.2, /0.80 = 75.6. */
    @Test
    void dividesTheBaselineByEachLimit() {
        PassByTime times = PassByTime.of(runs(60.2, 60.8, 60.5), RISE, Limits.DEFAULT);

        assertThat(times.baseline().seconds()).isCloseTo(60.5, within(1e-12));
        assertThat(times.watch().seconds()).isEqualTo(63);
        assertThat(times.plan().seconds()).isEqualTo(67);
        assertThat(times.act().seconds()).isEqualTo(75);
    }

    /** 57 s are 60 s at 95 % and 72 s are 80 s and 90 s: whole by arithmetic, not always in binary. */
    @ParameterizedTest
    @CsvSource({"57, 60.0, 63.0, 71.0", "72, 75.0, 80.0, 90.0", "19, 20.0, 21.1, 23.7", "12.35, 13.0, 13.7, 15.4"})
    void roundsDownToASecondAndShortTimesToATenth(double baseline, double watch, double plan, double act) {
        PassByTime times = PassByTime.of(runs(baseline), RISE, Limits.DEFAULT);

        assertThat(times.watch().seconds()).isEqualTo(watch);
        assertThat(times.plan().seconds()).isEqualTo(plan);
        assertThat(times.act().seconds()).isEqualTo(act);
    }

    @Test
    void followsTheLimitsOfThePlant() {
        PassByTime times = PassByTime.of(runs(100), RISE, new Limits(98, 80, 50));

        assertThat(times.watch().seconds()).isEqualTo(102);
        assertThat(times.plan().seconds()).isEqualTo(125);
        assertThat(times.act().seconds()).isEqualTo(200);
    }

    /**
     * 8 to 10 bar at 20 °C: 1.87 % for each kelvin. Source: the sensitivity table of a budget worked out apart from this
     * program, which gives 1.87 %/K on T2 for that band.
     */
    @Test
    void knowsHowMuchWarmAirShortensARun() {
        double part = PassByTime.shorterPerKelvin(
                new AbsolutePressure(901_325), new AbsolutePressure(1_101_325), new Temperature(293.15));

        assertThat(100 * part).isCloseTo(1.87, withinPercentage(1));
    }

    @Test
    void refusesNoRunAndNoRise() {
        var pressure = new AbsolutePressure(8e5);

        assertThatIllegalArgumentException().isThrownBy(() -> PassByTime.of(List.of(), RISE, Limits.DEFAULT));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PassByTime.shorterPerKelvin(pressure, pressure, new Temperature(293)));
    }

    /** 61.0 s for 32.5 psi are 60.06 s for 32; with 59.94 s for 32 the mean is 60.0. By hand. */
    @Test
    void bringsRunsStoppedADivisionApartToTheMarksOfTheCard() {
        var longer = new Run(new Elapsed(61.0), PressureDifference.of(32.5, PressureUnit.PSI));
        var plain = new Run(new Elapsed(59.938), PressureDifference.of(32, PressureUnit.PSI));

        PassByTime times =
                PassByTime.of(List.of(plain, longer), PressureDifference.of(32, PressureUnit.PSI), Limits.DEFAULT);

        assertThat(times.baseline().seconds()).isCloseTo(60.0, within(0.001));
    }

    private static List<Run> runs(double... seconds) {
        return DoubleStream.of(seconds)
                .mapToObj(one -> new Run(new Elapsed(one), RISE))
                .toList();
    }
}
