package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.PressureUnit.PSI;

import org.junit.jupiter.api.Test;
import plantair.pumpup.StandardAtmosphere;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;

/** Free air of one item; figures worked by hand unless a source is named. */
class ItemAirTests {

    private static final AbsolutePressure SEA_LEVEL = new AbsolutePressure(101_325);
    private static final AbsolutePressure FEET_5000 =
            StandardAtmosphere.stationPressure(Length.of(5000, LengthUnit.FOOT));
    private static final GaugePressure PSIG_90 = GaugePressure.of(90, PSI);
    private static final GaugePressure PSIG_100 = GaugePressure.of(100, PSI);
    private static final FlowRate CFM_10 = FlowRate.of(10, CFM);

    @Test
    void takesFreeAirAndWhatIsNotStatedAsItIs() {
        assertThat(ItemAir.here(CFM_10, FlowBasis.INTAKE, FEET_5000)).isEqualTo(CFM_10);
        assertThat(ItemAir.here(CFM_10, FlowBasis.UNKNOWN, FEET_5000)).isEqualTo(CFM_10);
    }

    /** 1.17 at 5,000 ft and 90 psig, see ChokedNozzleReferenceTests. */
    @Test
    void carriesAFigureOfSeaLevelToTheSite() {
        FlowRate there = ItemAir.fromSeaLevel(CFM_10, FlowBasis.INTAKE, PSIG_90, FEET_5000);

        assertThat(there.in(CFM)).isCloseTo(11.7, within(0.05));
        assertThat(ItemAir.fromSeaLevel(CFM_10, FlowBasis.INTAKE, PSIG_90, SEA_LEVEL))
                .isEqualTo(CFM_10);
    }

    /** 14.5 psia, 68 °F dry is what 50 % humid air of 20 °C at 14.5 psia plus its vapour of 0.17 psi becomes. */
    @Test
    void turnsAStandardFlowIntoFreeAir() {
        var humid = AbsolutePressure.of(14.5 + 0.5 * 0.3393, PSI);

        FlowRate free = ItemAir.here(CFM_10, FlowBasis.STANDARD_14_5PSIA_68F_DRY, humid);

        assertThat(free.in(CFM)).isCloseTo(10, within(0.002));
    }

    /** The same mass needs twice the volume where the dry air has half the pressure. */
    @Test
    void needsMoreFreeAirForAStandardFlowWhereAirIsThin() {
        var basis = FlowBasis.NORMAL_101_325KPA_0C_DRY;

        double ratio = ItemAir.here(CFM_10, basis, new AbsolutePressure(51_166))
                .over(ItemAir.here(CFM_10, basis, new AbsolutePressure(101_163)));

        assertThat(ratio).isCloseTo((101_163 - 1_169.6) / (51_166 - 1_169.6), within(1e-4));
    }

    /** Table of the blasting trade, see BlastNozzle: 137 cfm for 5/16 in at 100 psi. */
    @Test
    void readsTheTableOfBlastNozzles() {
        assertThat(ItemAir.blasting(BlastNozzle.NO_5, PSIG_100, SEA_LEVEL)
                        .orElseThrow()
                        .in(CFM))
                .isCloseTo(137, within(1e-9));
        assertThat(ItemAir.blasting(BlastNozzle.NO_5, GaugePressure.of(40, PSI), SEA_LEVEL))
                .isEmpty();
        assertThat(ItemAir.blasting(BlastNozzle.NO_5, PSIG_100, FEET_5000)
                        .orElseThrow()
                        .in(CFM))
                .isGreaterThan(137);
    }

    @Test
    void tellsNothingOfAHoleThatIsNotChoked() {
        var bore = Length.of(0.25, LengthUnit.INCH);

        assertThat(ItemAir.throughHole(bore, ChokedNozzle.SHARP, GaugePressure.of(10, PSI), SEA_LEVEL))
                .isEmpty();
        // trade handbook, 1/4 in at 100 psig, coefficient 1: 104 cfm (ChokedNozzleReferenceTests)
        assertThat(ItemAir.throughHole(bore, 1, PSIG_100, SEA_LEVEL)
                        .orElseThrow()
                        .in(CFM))
                .isCloseTo(104, within(1.0));
    }

    @Test
    void sharesTheTimeOfEvents() {
        var minute = Elapsed.of(1, DurationUnit.MINUTE);

        assertThat(ItemAir.share(minute, Elapsed.of(20, DurationUnit.MINUTE))).isCloseTo(0.05, within(1e-12));
        assertThat(ItemAir.share(minute, minute)).isEqualTo(1);
        assertThatThrownBy(() -> ItemAir.share(minute, new Elapsed(59))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesADisplacement() {
        assertThatThrownBy(() -> ItemAir.here(CFM_10, FlowBasis.DISPLACEMENT, SEA_LEVEL))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
