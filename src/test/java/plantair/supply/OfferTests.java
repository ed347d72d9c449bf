package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.PowerUnit.KW;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.TemperatureUnit.FAHRENHEIT;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plantair.pumpup.Intake;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Power;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;

/** Offers put side by side; invented, worked by hand. */
class OfferTests {

    private static final Intake STANDARD_DAY = intake(14.5, 68, 0);
    private static final GaugePressure PSIG_100 = GaugePressure.of(100, PSI);

    private static Intake intake(double psia, double fahrenheit, double humidity) {
        return new Intake(
                AbsolutePressure.of(psia, PSI), Temperature.of(fahrenheit, FAHRENHEIT), new RelativeHumidity(humidity));
    }

    private static Offer offer(double cfm, FlowBasis basis, Intake stated, double psig, double kilowatts) {
        return new Offer(
                "A", FlowRate.of(cfm, CFM), basis, stated, GaugePressure.of(psig, PSI), Power.of(kilowatts, KW));
    }

    @Test
    void leavesAnOfferOfTheSiteAsItIs() {
        Offer.AtSite found = offer(100, FlowBasis.INTAKE, STANDARD_DAY, 100, 18)
                .at(STANDARD_DAY, PSIG_100)
                .orElseThrow();

        assertThat(found.freeAir().in(CFM)).isCloseTo(100, within(1e-9));
        assertThat(found.power().in(KW)).isCloseTo(18, within(1e-9));
        assertThat(found.specificPower().forFlow(FlowRate.of(100, CFM)).in(KW)).isCloseTo(18, within(1e-9));
        assertThat(found.moved()).isEqualTo(1);
    }

    /**
     * 100 of 14.696 psia, 60 °F, dry, stated for an intake of 14.5 psia and 68 °F: 14.696/14.5 · 527.67/519.67 = 1.02912 as
     * many at that intake. Which of two offers is larger turns on it.
     */
    @Test
    void putsStandardFlowsOnOneBasis() {
        Offer.AtSite older = offer(100, FlowBasis.STANDARD_14_696PSIA_60F_DRY, STANDARD_DAY, 100, 18)
                .at(STANDARD_DAY, PSIG_100)
                .orElseThrow();
        Offer.AtSite newer = offer(102, FlowBasis.STANDARD_14_5PSIA_68F_DRY, STANDARD_DAY, 100, 18)
                .at(STANDARD_DAY, PSIG_100)
                .orElseThrow();

        assertThat(older.freeAir().in(CFM)).isCloseTo(102.912, within(5e-4));
        assertThat(newer.freeAir().in(CFM)).isCloseTo(102, within(1e-9));
        assertThat(older.specificPower().joulesPerCubicMetre())
                .isLessThan(newer.specificPower().joulesPerCubicMetre());
        assertThat(older.standard().over(newer.standard()))
                .isCloseTo(older.freeAir().over(newer.freeAir()), within(1e-12));
    }

    /** ((139.5/14.5)^(2/7) − 1)/((114.5/14.5)^(2/7) − 1) = 1.1297 by hand: what 125 psig takes more than 100. */
    @Test
    void putsPowersOnOnePressure() {
        Offer.AtSite found = offer(100, FlowBasis.INTAKE, STANDARD_DAY, 125, 20)
                .at(STANDARD_DAY, PSIG_100)
                .orElseThrow();

        double more = (Math.pow(139.5 / 14.5, 2 / 7.0) - 1) / (Math.pow(114.5 / 14.5, 2 / 7.0) - 1);
        assertThat(found.power().in(KW)).isCloseTo(20 / more, within(1e-9));
        assertThat(found.moved()).isCloseTo(114.5 / 139.5, within(1e-12));
        assertThat(found.freeAir().in(CFM)).isCloseTo(100, within(1e-9));
    }

    /** A machine stated at sea level draws in the same volume a mile up, which is less standard air. */
    @Test
    void drawsInTheSameVolumeAboveSeaLevel() {
        Intake mile = intake(12.1, 68, 0);

        Offer.AtSite found = offer(100, FlowBasis.STANDARD_14_5PSIA_68F_DRY, STANDARD_DAY, 100, 18)
                .at(mile, PSIG_100)
                .orElseThrow();

        assertThat(found.freeAir().in(CFM)).isCloseTo(100, within(1e-9));
        assertThat(found.standard().in(CFM))
                .isCloseTo(100 * AbsolutePressure.of(12.1, PSI).pascals() / 100_000, withinPercentage(1e-2));
        assertThat(found.power().in(KW)).isLessThan(18);
    }

    @ParameterizedTest
    @EnumSource(names = {"DISPLACEMENT", "UNKNOWN"})
    void doesNotCompareWhatHasNoBasis(FlowBasis basis) {
        assertThat(offer(100, basis, STANDARD_DAY, 100, 18).at(STANDARD_DAY, PSIG_100))
                .isEmpty();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> offer(0, FlowBasis.INTAKE, STANDARD_DAY, 100, 18))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> offer(100, FlowBasis.INTAKE, STANDARD_DAY, 0, 18))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> offer(100, FlowBasis.INTAKE, STANDARD_DAY, 100, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
