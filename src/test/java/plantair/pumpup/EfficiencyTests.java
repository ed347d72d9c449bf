package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.ShaftSpeed;

/** Displacement, power and efficiencies (M16 to M18). */
class EfficiencyTests {

    private static final double ATMOSPHERE_PSI = 14.7;

    /**
     * Machinery's Handbook, 31st edition, horsepower to compress one cubic foot a minute at 14.7 psia in one stage (mean
     * effective pressures, printed to 0.01 psi) and in two; read in copies. Both follow from κ = 1.41; with two stages
     * each does the same work from the intake's temperature over the root of the ratio. Tolerance: the prints differ from
     * the formula by up to 0.001 hp.
     */
    @ParameterizedTest
    @CsvSource({
        "80, 0.1587, 0.137",
        "90, 0.1697, 0.145",
        "100, 0.1801, 0.153",
        "110, 0.1901, 0.161",
        "120, 0.1994, 0.168"
    })
    void agreesWithTheHandbookTableOfHorsepower(double gauge, double oneStage, double twoStages) {
        double middle = Math.sqrt(ATMOSPHERE_PSI * (ATMOSPHERE_PSI + gauge));

        assertThat(handbook(ATMOSPHERE_PSI + gauge)).isCloseTo(oneStage, within(0.0003));
        assertThat(2 * handbook(middle)).isCloseTo(twoStages, within(0.001));
    }

    private static double handbook(double toPsi) {
        return Efficiency.work(FlowRate.of(1, FlowUnit.CFM), psia(ATMOSPHERE_PSI), psia(toPsi), 1.41)
                .in(PowerUnit.HP);
    }

    /** Rajput, A Textbook of Internal Combustion Engines, example 20.1; read in a worked companion: 4.24 kW. */
    @Test
    void agreesWithTextbookOnThePowerAlongPolytrope() {
        var power = Efficiency.work(FlowRate.of(1, FlowUnit.CUBIC_METRE_PER_MINUTE), bar(1.013), bar(7), 1.35);

        assertThat(power.in(PowerUnit.KW)).isCloseTo(4.24, within(0.005));
    }

    /**
     * Arasu, Thermal Engineering, example 5.1; read in a worked companion: 200 mm by 300 mm, 100 rpm, 1 to 8 bar with
     * exponent 1.25: 4.06 kW, with π as 3.147.
     */
    @Test
    void agreesWithTextbookOnDisplacementAndPower() {
        var swept = Displacement.of(mm(200), mm(300), new ShaftSpeed(100), 1);

        assertThat(Efficiency.work(swept, bar(1), bar(8), 1.25).in(PowerUnit.KW))
                .isCloseTo(4.06 * Math.PI / 3.147, within(0.005));
    }

    /**
     * Joel, Basic Engineering Thermodynamics, chapter 14, example 1 (attribution from memory): 200 mm by 300 mm at 500
     * rpm delivers 3.814 m³/min of free air, volumetric efficiency 80.9 %.
     */
    @Test
    void agreesWithTextbookOnVolumetricEfficiency() {
        var swept = Displacement.of(mm(200), mm(300), new ShaftSpeed(500), 1);
        var delivered = FlowRate.of(3.814, FlowUnit.CUBIC_METRE_PER_MINUTE);

        assertThat(100 * Displacement.volumetricEfficiency(delivered, swept)).isCloseTo(80.9, within(0.05));
    }

    /** Trade page: 100 mm by 70 mm, three cylinders, 800 rpm, 1,320 L/min with π = 22/7; 1,319.5 with π. */
    @Test
    void agreesWithTradeExampleOfDisplacement() {
        var swept = Displacement.of(mm(100), mm(70), new ShaftSpeed(800), 3);

        assertThat(swept.in(FlowUnit.LITRE_PER_MINUTE)).isCloseTo(1320 * Math.PI / (22.0 / 7), within(0.01));
    }

    /** Own: the 80 gal worked case, 21.97 ft³ in 62.4 s from 14.6 psia to 110 psig, computed by another program. */
    @Test
    void givesTheLeastPowerOfTheWorkedCase() {
        var flow = FlowRate.of(21.97 / 62.4 * 60, FlowUnit.CFM);

        assertThat(Efficiency.leastPower(flow, psia(14.6), psia(124.6)).in(PowerUnit.KW))
                .isCloseTo(2.97, within(0.005));
    }

    /** Own, from the closed formula: 284.007 kJ for each cubic metre from 1 to 8 bar absolute, 4.7334 kW per m³/min. */
    @Test
    void givesEnergyForEachVolume() {
        var flow = new FlowRate(0.37);
        var specific = SpecificPower.of(Efficiency.leastPower(flow, bar(1), bar(8)), flow);

        assertThat(specific.joulesPerCubicMetre()).isCloseTo(284_007, within(0.5));
        assertThat(specific.forFlow(FlowRate.of(1, FlowUnit.CUBIC_METRE_PER_MINUTE))
                        .in(PowerUnit.KW))
                .isCloseTo(4.7334, within(0.00005));
    }

    /** Trade practice: horsepower for 100 cfm times 0.263341 is kW for 1 m³/min; 26.334 of 100 hp. */
    @Test
    void convertsBetweenTheWaysOfTellingSpecificPower() {
        var specific = SpecificPower.of(Power.of(20, PowerUnit.HP), FlowRate.of(100, FlowUnit.CFM));

        assertThat(specific.forFlow(FlowRate.of(1, FlowUnit.CUBIC_METRE_PER_MINUTE))
                        .in(PowerUnit.KW))
                .isCloseTo(20 * 0.263341, within(0.00001));
    }

    @Test
    void needsNoPowerWithoutRise() {
        assertThat(Efficiency.leastPower(new FlowRate(1), bar(1), bar(1)).watts())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "10.5, 12, POSSIBLE",
        "11.39, 12, POSSIBLE",
        "11.5, 12, UNLIKELY",
        "12, 12, UNLIKELY",
        "12.1, 12, IMPOSSIBLE"
    })
    void judgesTheVolumetricEfficiency(double litres, double swept, Judgement judgement) {
        var machine = new MachineData(FlowRate.of(swept, FlowUnit.LITRE_PER_SECOND), null, null, false, null);

        assertThat(at(litres, machine).judgement()).isEqualTo(judgement);
    }

    /** 10 L/s from 1 to 8 bar need 2.84 kW at least. */
    @ParameterizedTest
    @CsvSource({"3.35, POSSIBLE", "3.33, UNLIKELY", "2.85, UNLIKELY", "2.83, IMPOSSIBLE"})
    void judgesTheIsentropicEfficiency(double kilowatts, Judgement judgement) {
        var machine = new MachineData(null, null, Power.of(kilowatts, PowerUnit.KW), false, null);

        assertThat(at(10, machine).judgement()).isEqualTo(judgement);
        assertThat(at(10, machine).fromPlate()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"2.91, POSSIBLE", "2.90, UNLIKELY", "2.48, UNLIKELY", "2.46, IMPOSSIBLE"})
    void allowsMotorToRunAboveItsPlate(double kilowatts, Judgement judgement) {
        var machine = new MachineData(null, Power.of(kilowatts, PowerUnit.KW), null, false, null);

        assertThat(at(10, machine).judgement()).isEqualTo(judgement);
        assertThat(at(10, machine).fromPlate()).isTrue();
    }

    @Test
    void prefersMeasuredPowerAndTellsTheWorseJudgement() {
        var machine = new MachineData(
                FlowRate.of(12, FlowUnit.LITRE_PER_SECOND),
                Power.of(4, PowerUnit.KW),
                Power.of(2.5, PowerUnit.KW),
                false,
                null);
        Efficiency efficiency = at(10, machine);

        assertThat(efficiency.isentropic()).isCloseTo(2.84007 / 2.5, within(1e-5));
        assertThat(efficiency.volumetricJudgement()).isEqualTo(Judgement.POSSIBLE);
        assertThat(efficiency.judgement()).isEqualTo(Judgement.IMPOSSIBLE);
    }

    @Test
    void judgesNothingWithoutData() {
        Efficiency efficiency = at(10, MachineData.UNKNOWN);

        assertThat(efficiency.volumetric()).isNull();
        assertThat(efficiency.isentropic()).isNull();
        assertThat(efficiency.judgement()).isEqualTo(Judgement.POSSIBLE);
    }

    @Test
    void refusesWhatIsOutsideItsRange() {
        var none = new FlowRate(0);
        assertThatIllegalArgumentException().isThrownBy(() -> Efficiency.leastPower(new FlowRate(-1), bar(1), bar(2)));
        assertThatIllegalArgumentException().isThrownBy(() -> Efficiency.leastPower(none, bar(2), bar(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> Efficiency.isentropic(new Power(1), new Power(0)));
        assertThatIllegalArgumentException().isThrownBy(() -> Displacement.volumetricEfficiency(none, none));
        assertThatIllegalArgumentException().isThrownBy(() -> Displacement.of(mm(0), mm(1), new ShaftSpeed(100), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> SpecificPower.of(new Power(1), none));
    }

    private static Efficiency at(double litresPerSecond, MachineData machine) {
        return Efficiency.of(FlowRate.of(litresPerSecond, FlowUnit.LITRE_PER_SECOND), bar(1), bar(8), machine);
    }

    private static AbsolutePressure psia(double value) {
        return AbsolutePressure.of(value, PressureUnit.PSI);
    }

    private static AbsolutePressure bar(double value) {
        return AbsolutePressure.of(value, PressureUnit.BAR);
    }

    private static Length mm(double value) {
        return Length.of(value, LengthUnit.MILLIMETRE);
    }
}
