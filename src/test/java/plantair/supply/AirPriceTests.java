package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.FlowUnit.CUBIC_METRE_PER_MINUTE;
import static plantair.quantity.PowerUnit.KW;

import java.util.Collections;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.leak.LoadCycle;
import plantair.leak.LoadShare;
import plantair.pumpup.SpecificPower;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Power;

/** Cost of air against printed examples and invented plants worked by hand. */
class AirPriceTests {

    private static final MeasuredFlow CAPACITY = cfm(210, 0);

    private static MeasuredFlow cfm(double flow, double relativeU) {
        return MeasuredFlow.of(FlowRate.of(flow, CFM), relativeU, FlowBasis.INTAKE);
    }

    private static AirPrice price(double kwPerHundredCfm, double hours, double tariff) {
        var specific = SpecificPower.of(Power.of(kwPerHundredCfm, KW), FlowRate.of(100, CFM));
        return new AirPrice(specific, 0, hours, tariff);
    }

    private static MeasuredFlow night(double load, double unload) {
        return LoadShare.of(Collections.nCopies(5, new LoadCycle(load, unload, 0)))
                .leak(CAPACITY);
    }

    private static double money(YearlyCost cost) {
        return Objects.requireNonNull(cost.money());
    }

    /** Own: 90/410 s of 210 cfm at 19 kW a 100 cfm, 8,760 h, 0.11: 7.2 kW and 6,921; after repairs 45/655 s, 4,449 saved. */
    @Test
    void knowsWhatALeakCostsAndItsRepairSaves() {
        AirPrice price = price(19, 8760, 0.11);

        YearlyCost leak = price.of(night(90, 410));
        YearlyCost saved = price.saved(night(90, 410), night(45, 655));

        assertThat(leak.kilowatts()).isCloseTo(7.2, within(0.05));
        assertThat(leak.kilowattHours()).isCloseTo(62_914, within(0.5));
        assertThat(money(leak)).isCloseTo(6921, within(0.5));
        assertThat(money(saved)).isCloseTo(4449, within(0.5));
    }

    /** Own: 100 cfm at 20 kW and 0.12 for 2,000, 6,000 and 8,760 h. */
    @ParameterizedTest
    @CsvSource({"2000, 4800", "6000, 14400", "8760, 21024"})
    void knowsWhatAHundredCfmCost(double hours, double money) {
        assertThat(money(price(20, hours, 0.12).perHundredCfm())).isCloseTo(money, within(1e-6));
    }

    @Test
    void knowsWhatACubicMetreAMinuteCosts() {
        AirPrice price = price(20, 6000, 0.12);

        double hundred = FlowRate.of(100, CFM).in(CUBIC_METRE_PER_MINUTE);
        assertThat(money(price.perCubicMetrePerMinute()) * hundred)
                .isCloseTo(money(price.perHundredCfm()), within(1e-6));
    }

    /**
     * Bureau of Energy Efficiency (India), from memory: 188 kW for 35 m³/min are 0.0895 kWh/m³; a leak of 4.375 m³/min
     * takes 563.85 kWh a day, 564.0 unrounded.
     */
    @Test
    void agreesWithAnEnergyAuditGuide() {
        var specific = SpecificPower.of(Power.of(188, KW), FlowRate.of(35, CUBIC_METRE_PER_MINUTE));
        var leak = MeasuredFlow.of(FlowRate.of(4.375, CUBIC_METRE_PER_MINUTE), 0, FlowBasis.INTAKE);

        double kilowattHours = new AirPrice(specific, 0, 24, null).of(leak).kilowattHours();

        assertThat(kilowattHours / 6300).isCloseTo(0.0895, within(5e-5));
        assertThat(kilowattHours).isCloseTo(564.0, within(0.05));
        assertThat(6300 * 0.0895).isCloseTo(563.85, within(1e-9));
    }

    /**
     * Training page of a vendor (read in a copy): 900 cfm with 144 kW, a leak of 127.8 cfm (cut short) takes 20.45 kW; of
     * 128.57 cfm 20.57 kW.
     */
    @ParameterizedTest
    @CsvSource({"127.8, 20.45", "128.571, 20.57"})
    void agreesWithATrainingExample(double leak, double kilowatts) {
        var specific = SpecificPower.of(Power.of(144, KW), FlowRate.of(900, CFM));

        assertThat(new AirPrice(specific, 0, 8760, null).of(cfm(leak, 0)).kilowatts())
                .isCloseTo(kilowatts, within(5e-3));
    }

    /**
     * Tip sheet of the US Department of Energy (from memory): 100 holes of 1/32 in at 90 psig, 50 of 1/16 at 90, 10 of 1/4 at
     * 100, sharp-edged 0.61, 7,000 h, 0.05, 18 kW a 100 cfm: 5,611, 10,991 and 38,776 a year. Its table's flows go in.
     */
    @ParameterizedTest
    @CsvSource({"100, 1.46, 5611", "50, 5.72, 10991", "10, 100.9, 38776"})
    void agreesWithATipSheet(int holes, double table, double money) {
        MeasuredFlow leak = cfm(holes * table * ChokedNozzle.SHARP, 0);

        assertThat(money(price(18, 7000, 0.05).of(leak))).isCloseTo(money, within(0.5));
    }

    /** Told where 1.645 of its uncertainty lets it be above zero: 60 % does, 61 % does not. */
    @Test
    void isToldWhereItIsSurelyAboveZero() {
        assertThat(new YearlyCost(1, 1, null, 0.60).isTold()).isTrue();
        assertThat(new YearlyCost(1, 1, null, 0.61).isTold()).isFalse();
        assertThat(new YearlyCost(0, 0, null, 0).isTold()).isFalse();
    }

    @Test
    void doesNotKnowMoneyWithoutATariff() {
        var specific = SpecificPower.of(Power.of(19, KW), FlowRate.of(100, CFM));

        YearlyCost cost = new AirPrice(specific, 0, 8760, null).of(cfm(10, 0));

        assertThat(cost.money()).isNull();
        assertThat(cost.kilowattHours()).isCloseTo(1.9 * 8760, within(1e-6));
    }

    /** √(0.04² + 0.03²) = 0.05; of a saving of 60 between 100 ± 3 and 40 ± 4 the flow is ± 5/60. */
    @Test
    void carriesUncertaintiesThrough() {
        var specific = SpecificPower.of(Power.of(19, KW), FlowRate.of(100, CFM));
        var unsure = new AirPrice(specific, 0.03, 8760, 0.1);

        assertThat(unsure.of(cfm(10, 0.04)).relativeU()).isCloseTo(0.05, within(1e-12));
        assertThat(unsure.of(cfm(0, 0)).relativeU()).isEqualTo(0.03);
        assertThat(unsure.saved(cfm(100, 0.03), cfm(40, 0.1)).relativeU())
                .isCloseTo(Math.hypot(5 / 60.0, 0.03), within(1e-12));
    }

    /** The guide's machine takes 188 kW loaded and 54 unloaded: 134 of 188 kW are saved. */
    @Test
    void savesLessWhereTheMachineIdles() {
        AirPrice full = price(19, 8760, 0.11);

        AirPrice idles = full.ofWhatIdles(54 / 188.0);

        assertThat(money(idles.of(cfm(37.8, 0))) / money(full.of(cfm(37.8, 0)))).isCloseTo(134 / 188.0, within(1e-12));
        assertThatThrownBy(() -> full.ofWhatIdles(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> full.ofWhatIdles(-0.1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesWhatCannotBe() {
        AirPrice price = price(19, 8760, 0.1);

        assertThatThrownBy(() -> price.saved(cfm(10, 0), cfm(11, 0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> price.saved(
                        cfm(10, 0), MeasuredFlow.of(FlowRate.of(1, CFM), 0, FlowBasis.STANDARD_100KPA_20C_DRY)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> price(19, 8785, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> price(19, -1, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> price(19, 8760, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
