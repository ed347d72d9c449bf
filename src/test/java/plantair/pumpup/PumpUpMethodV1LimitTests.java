package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.quantity.VolumeUnit.LITRE;

import org.junit.jupiter.api.Test;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;

/** What the method must come to where the answer is known without a source. */
class PumpUpMethodV1LimitTests {

    private static SampleReadings test() {
        return SampleReadings.good().noRuns();
    }

    /** Tolerance: roundings of a double. */
    @Test
    void isTheHandMethodForDryIdealAirOfOneTemperature() {
        PumpUpResult result = test().humidity(0).run(6, 9, 60).ideal();

        assertThat(si(result.freeAir())).isCloseTo(si(result.handMethod()), withinPercentage(1e-10));
    }

    /** A hotter receiver holds less: the ratio of the temperatures, as energy-audit guides have it. */
    @Test
    void isTheHandMethodTimesTheRatioOfTemperaturesForAWarmReceiver() {
        PumpUpResult result = test().humidity(0).run(6, 9, 60, 45, 45).ideal();

        assertThat(si(result.freeAir())).isCloseTo(si(result.handMethod()) * 293.15 / 318.15, withinPercentage(1e-10));
    }

    /** Air that does not condense is delivered with its vapour: humidity then makes no difference. */
    @Test
    void doesNotMindHumidityWhereNothingCondenses() {
        double dry = si(test().humidity(0).run(0, 0.3, 60, 40, 40).ideal().freeAir());

        double humid = si(test().humidity(0.3).run(0, 0.3, 60, 40, 40).ideal().freeAir());

        assertThat(humid).isCloseTo(dry, withinPercentage(1e-10));
    }

    /** Vapour that condenses leaves its room to air: the flow is higher by the vapour's part of the intake. */
    @Test
    void countsVapourThatCondenses() {
        double dry = si(test().humidity(0).run(6, 9, 60).ideal().freeAir());
        PumpUpReadings readings = test().humidity(0.8).run(6, 9, 60).readings();

        double humid =
                si(new PumpUpMethodV1(Compressibility.IDEAL).evaluate(readings).freeAir());

        assertThat(humid / dry).isCloseTo(1 / (1 - readings.intake().vapourFraction()), within(1e-12));
    }

    /** Second virial coefficient of air at 20 °C about −8.6 cm³/mol: 0.5 to 0.7 % more between 6 and 9 bar. */
    @Test
    void findsMoreAirBecauseAirIsNotIdeal() {
        double ideal = si(test().run(6, 9, 60).ideal().freeAir());

        double real = si(test().run(6, 9, 60).result().freeAir());

        assertThat(real / ideal - 1).isBetween(0.005, 0.007);
    }

    @Test
    void takesASettledReadingLikeTheStopWhereNothingChanged() {
        double measured = si(test().run(6, 9, 60, 20, 30).result().freeAir());

        double settled = si(test().air(AirTemperature.SETTLED)
                .settledRun(6, 9, 60, 9, 30)
                .result()
                .freeAir());

        assertThat(settled).isEqualTo(measured);
    }

    @Test
    void takesTheStartAirOfASettledRunWhereItWasRead() {
        RunReadings run = RunReadings.of(bar(6), bar(9), new Elapsed(60)).withSettled(bar(8.7), celsius(22));
        double notRead = si(test().air(AirTemperature.SETTLED).add(run).result().freeAir());

        double read = si(test().air(AirTemperature.SETTLED)
                .add(run.withAir(celsius(26), celsius(40)))
                .result()
                .freeAir());

        assertThat(read).isGreaterThan(notRead * 1.03);
    }

    /** The stop temperature plays no part in a settled test, and neither air temperature in one without. */
    @Test
    void ignoresTemperaturesThatTheTreatmentDoesNotUse() {
        RunReadings run = RunReadings.of(bar(6), bar(9), new Elapsed(60));
        PumpUpResult bare = test().air(AirTemperature.NOT_MEASURED).add(run).result();

        PumpUpResult read = test().air(AirTemperature.NOT_MEASURED)
                .add(run.withAir(celsius(30), celsius(50)))
                .result();

        assertThat(read.freeAir()).isEqualTo(bare.freeAir());
    }

    @Test
    void refersTheFlowToRatedSpeed() {
        PumpUpResult result = test().speeds(1400, 1470).run(6, 9, 60).result();

        assertThat(si(result.atRatedSpeed())).isCloseTo(si(result.freeAir()) * 1.05, withinPercentage(1e-10));
        assertThat(result.comparableFlow()).isEqualTo(result.atRatedSpeed());
        assertThat(result.rating().measured()).isEqualTo(result.atRatedSpeed());
    }

    @Test
    void takesTheMeanOfTheRuns() {
        PumpUpResult result = SampleReadings.good().result();

        double mean = result.runs().stream()
                .mapToDouble(run -> si(run.freeAir()))
                .average()
                .orElseThrow();
        assertThat(si(result.freeAir())).isCloseTo(mean, withinPercentage(1e-12));
        assertThat(result.midPressure().in(PressureUnit.BAR)).isCloseTo(7.5, within(1e-12));
        assertThat(result.band().in(PressureUnit.BAR)).isCloseTo(3, within(1e-12));
    }

    @Test
    void addsReceiversAndPipesAndTakesWaterAway() {
        PumpUpReadings readings = SampleReadings.good()
                .part(VolumePart.Kind.PIPE, 20, LITRE)
                .part(VolumePart.Kind.WATER, 5, LITRE)
                .readings();

        assertThat(readings.netVolume().in(LITRE)).isCloseTo(315, within(1e-9));
    }

    /** Own arithmetic: π/4 · (2 in)² · 100 ft = 2.18166 ft³. */
    @Test
    void findsTheVolumeOfAPipe() {
        double metres3 = VolumePart.ofPipe(Length.of(100, LengthUnit.FOOT), Length.of(2, LengthUnit.INCH))
                .cubicMetres();

        assertThat(metres3 / 0.028316846592).isCloseTo(2.18166, within(5e-6));
    }

    /** d ln q/dT at each end, by varying the reading; the statement takes 2 K at each. Tolerance: vapour moves with T too. */
    @Test
    void statesWhatTwoKelvinOfAirTemperatureDoToTheFlow() {
        PumpUpResult result = test().instruments(0.3, 2, 500)
                .humidity(0)
                .run(6, 9, 60, 30, 34)
                .ideal();
        double q = si(result.freeAir());
        double atStart = si(test().humidity(0).run(6, 9, 60, 30.01, 34).ideal().freeAir()) / q - 1;
        double atStop = si(test().humidity(0).run(6, 9, 60, 30, 34.01).ideal().freeAir()) / q - 1;

        double stated = Math.sqrt(result.uncertainty().components().stream()
                .filter(component -> component.sharedWith() == Uncertainty.SharedWith.THERMOMETER)
                .mapToDouble(component -> component.relative() * component.relative())
                .sum());

        assertThat(stated).isCloseTo(2 / 0.01 * Math.hypot(atStart, atStop), withinPercentage(0.1));
    }

    @Test
    void knowsItsVersions() {
        assertThat(PumpUpMethods.current().version()).isEqualTo("PU-1");
        assertThat(PumpUpMethods.version("PU-1")).isSameAs(PumpUpMethods.current());
        assertThatIllegalArgumentException().isThrownBy(() -> PumpUpMethods.version("PU-0"));
    }

    @Test
    void refusesReadingsThatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> RunReadings.of(bar(9), bar(9), new Elapsed(60)));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> RunReadings.of(bar(6), bar(9), new Elapsed(60)).withSettled(bar(6), celsius(20)));
        assertThatIllegalArgumentException().isThrownBy(() -> test().readings());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SampleReadings.good()
                        .part(VolumePart.Kind.WATER, 300, LITRE)
                        .readings());
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> SampleReadings.good().air(AirTemperature.SETTLED).readings());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Intake(new AbsolutePressure(7000), celsius(40), new RelativeHumidity(1)));
    }

    private static double si(FlowRate flow) {
        return flow.cubicMetresPerSecond();
    }

    private static GaugePressure bar(double value) {
        return GaugePressure.of(value, PressureUnit.BAR);
    }

    private static Temperature celsius(double value) {
        return Temperature.of(value, TemperatureUnit.CELSIUS);
    }
}
