package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.pumpup.Recommendation.Reason;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;

/** What a test would be worth. */
class TestPlanTests {

    private static final GaugeAccuracy CLASS_2_5 =
            new GaugeAccuracy(bar(16), 0.025, bar(0.03 * 2 * Math.sqrt(3)), List.of());

    private static final TestPlan PLAN = TestPlan.of(setup(227, 400));

    private static PlanSetup setup(double litres, double litresPerMinute) {
        return new PlanSetup(
                VesselVolume.of(litres, VolumeUnit.LITRE),
                VolumePart.PLATE_U,
                new Instruments(CLASS_2_5, 0.3, 2, 500),
                FlowRate.of(litresPerMinute, FlowUnit.LITRE_PER_MINUTE),
                GaugePressure.of(10, PressureUnit.BAR),
                bar(1),
                new Intake(
                        new AbsolutePressure(101_325),
                        Temperature.of(20, TemperatureUnit.CELSIUS),
                        new RelativeHumidity(0)));
    }

    private static PressureDifference bar(double value) {
        return PressureDifference.of(value, PressureUnit.BAR);
    }

    private static double start(PlanRow row) {
        return row.start().in(PressureUnit.BAR);
    }

    /**
     * Own simulation of a 227 L receiver filled to 10 bar at 400 L/min, in another program: h and the inlet drawn at
     * random, the ideal gas, and the time as if the air stayed cool. Tolerances: time 0.7 % and half a second for Z;
     * reading, gauge and thermometer half of the last digit, with 0.5 % of Z where that is more; start air and F as far as
     * the mean of a simulation and the model at its mean differ, 12 % and 0.6 of the simulated deviation.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 336, 0.30, 2.1, 8.6, 2.2, 0.1, 0.8",
        "2, 269, 0.53, 2.5, 10, 2.8, 0.4, 1.0",
        "4, 202, 0.71, 3.3, 13, 3.8, 0.9, 1.4",
        "6, 134, 1.06, 4.8, 18, 5.1, 1.8, 2.2",
        "7, 101, 1.41, 6.3, 23, 5.8, 2.6, 3.1",
        "8, 67, 2.12, 9.5, 29, 6.4, 3.6, 4.9",
        "9, 34, 4.24, 19, 38, 6.7, 4.7, 10"
    })
    void agreesWithSimulation(
            double start,
            double coolSeconds,
            double reading,
            double gauge,
            double warming,
            double deviation,
            double startAir,
            double thermometer) {
        PlanRow row = PLAN.rows().get((int) start);

        assertThat(start(row)).isCloseTo(start, within(1e-9));
        assertThat(row.elapsed().seconds() * row.warming().factor())
                .isCloseTo(coolSeconds, within(0.5 + 0.007 * coolSeconds));
        assertThat(100 * row.reading()).isCloseTo(reading, within(start == 0 ? 0.13 : 0.0051));
        assertThat(100 * row.gauge()).isCloseTo(gauge, within(start == 9 ? 0.5 : 0.051));
        assertThat(100 * (row.warming().factor() - 1)).isCloseTo(warming, within(0.6 * deviation));
        assertThat(100 * row.warming().relativeRandom()).isCloseTo(startAir, within(0.06 + 0.12 * startAir));
        assertThat(100 * 2 * row.perKelvin()).isCloseTo(thermometer, within(0.05 + 0.04 * thermometer));
    }

    @Test
    void foretellsTheTimeThatTheMethodTurnsIntoTheExpectedFlow() {
        for (PlanRow row : PLAN.rows()) {
            double flow = SampleReadings.in(PressureUnit.BAR, TemperatureUnit.CELSIUS)
                    .volume(227, VolumeUnit.LITRE)
                    .barometer(1.01325)
                    .air(AirTemperature.NOT_MEASURED)
                    .run(start(row), 10, row.elapsed().seconds())
                    .result()
                    .freeAir()
                    .in(FlowUnit.LITRE_PER_MINUTE);

            assertThat(flow).isCloseTo(400, within(1e-5));
        }
    }

    /** From the settled column of the same simulation: needle and clock alone. */
    @ParameterizedTest
    @CsvSource({"2, 0.54", "4, 0.72", "6, 1.08", "7, 1.45", "8, 2.2"})
    void isSurerFromTestToTestWithSettledReading(int start, double percent) {
        PlanRow row = PLAN.rows().get(start);

        assertThat(100 * row.perTest(AirTemperature.SETTLED)).isCloseTo(percent, within(0.035));
        assertThat(row.perTest(AirTemperature.SETTLED)).isLessThan(row.perTest(AirTemperature.NOT_MEASURED));
    }

    @Test
    void combinesItsPartsByRootSumOfSquares() {
        PlanRow row = PLAN.rows().get(8);
        double perTest = Math.sqrt(row.reading() * row.reading()
                + row.clock() * row.clock()
                + Math.pow(row.warming().relativeRandom(), 2));
        double shared = Math.sqrt(row.gauge() * row.gauge()
                + row.volume() * row.volume()
                + Math.pow(row.warming().relativeShared(), 2));

        assertThat(row.perTest(AirTemperature.NOT_MEASURED)).isCloseTo(perTest, within(1e-12));
        assertThat(row.shared(AirTemperature.NOT_MEASURED)).isCloseTo(shared, within(1e-12));
        assertThat(row.combined(AirTemperature.NOT_MEASURED)).isCloseTo(Math.hypot(perTest, shared), within(1e-12));
        assertThat(row.shared(AirTemperature.MEASURED))
                .isCloseTo(
                        Math.sqrt(Math.pow(row.gauge(), 2)
                                + Math.pow(row.volume(), 2)
                                + Math.pow(2 * row.perKelvin(), 2)),
                        within(1e-12));
        assertThat(row.perTest(AirTemperature.MEASURED))
                .isCloseTo(
                        Math.sqrt(Math.pow(row.reading(), 2)
                                + Math.pow(row.clock(), 2)
                                + Math.pow(0.3 * row.perKelvin(), 2)),
                        within(1e-12));
    }

    /** The narrowest band within 2 %: nearest to working pressure. */
    @ParameterizedTest
    @CsvSource({"NOT_MEASURED, 6", "SETTLED, 7", "MEASURED, 7"})
    void recommendsTheBandNearestToTheStopThatIsGoodEnough(AirTemperature air, double start) {
        Recommendation recommendation = PLAN.recommended(air).orElseThrow();

        assertThat(start(recommendation.row())).isCloseTo(start, within(1e-9));
        assertThat(recommendation.reason()).isEqualTo(Reason.GOOD_ENOUGH);
        assertThat(recommendation.row().perTest(air)).isLessThanOrEqualTo(TestPlan.GOAL);
        assertThat(PLAN.rows().get((int) start + 1).perTest(air)).isGreaterThan(TestPlan.GOAL);
    }

    @Test
    void takesLowerStartWhereTheGoodBandIsTooShort() {
        Recommendation recommendation = TestPlan.of(setup(227, 1600))
                .recommended(AirTemperature.SETTLED)
                .orElseThrow();

        assertThat(recommendation.row().elapsed().seconds()).isGreaterThan(30);
        assertThat(start(recommendation.row())).isLessThan(7);
    }

    @Test
    void saysWhenNoBandIsGoodEnough() {
        var coarse = new GaugeAccuracy(bar(16), 0.025, bar(1), List.of());
        var plan = TestPlan.of(setup(227, 400).with(coarse));
        Recommendation recommendation = plan.recommended(AirTemperature.SETTLED).orElseThrow();

        assertThat(recommendation.reason()).isEqualTo(Reason.BEST_THERE_IS);
        assertThat(start(recommendation.row())).isZero();
    }

    @Test
    void saysWhenEveryBandIsTooShort() {
        Recommendation recommendation =
                TestPlan.of(setup(20, 1000)).recommended(AirTemperature.SETTLED).orElseThrow();

        assertThat(recommendation.reason()).isEqualTo(Reason.ALL_TOO_SHORT);
        assertThat(start(recommendation.row())).isZero();
    }

    @Test
    void hasNoBandThatLastsForDaysOrAnInstant() {
        assertThat(TestPlan.of(setup(100_000, 1)).rows()).isEmpty();
        assertThat(TestPlan.of(setup(1, 100_000)).rows()).isEmpty();
        assertThat(TestPlan.of(setup(1, 100_000)).recommended(AirTemperature.SETTLED))
                .isEmpty();
    }

    @Test
    void doublesStepsThatWouldMakeTooManyBands() {
        PlanSetup fine = setup(227, 400);
        var plan = TestPlan.of(new PlanSetup(
                fine.volume(),
                fine.volumeU(),
                fine.instruments(),
                fine.expected(),
                fine.stop(),
                bar(0.2),
                fine.intake()));

        assertThat(plan.rows()).hasSize(13);
        assertThat(start(plan.rows().get(1))).isCloseTo(0.8, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.025, 0.016", "0.02, 0.01", "0.016, 0.01", "0.01, 0.006", "0.005, 0.0025", "0.003, 0.001"})
    void knowsTheNextGaugeWorthHaving(double limit, double better) {
        GaugeAccuracy next = TestPlan.betterGauge(new GaugeAccuracy(bar(16), limit, bar(0.1), List.of()))
                .orElseThrow();

        assertThat(next.limitPart()).isEqualTo(better);
        assertThat(next.division()).isEqualTo(bar(0.1));
    }

    @Test
    void knowsNoBetterGaugeThanTheBest() {
        assertThat(TestPlan.betterGauge(new GaugeAccuracy(bar(16), 0.001, bar(0.1), List.of())))
                .isEmpty();
    }

    @Test
    void refusesToPlanWithoutGauge() {
        PlanSetup some = setup(227, 400);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PlanSetup(
                        some.volume(),
                        some.volumeU(),
                        Instruments.UNNAMED,
                        some.expected(),
                        some.stop(),
                        some.step(),
                        some.intake()));
    }
}
