package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.LengthUnit.INCH;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.TemperatureUnit.FAHRENHEIT;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Temperature;

/** Nozzles and holes against tables of handbooks. */
class ChokedNozzleReferenceTests {

    private static final Temperature WARM = Temperature.of(68, FAHRENHEIT);
    private static final AbsolutePressure PSIA_14_7 = AbsolutePressure.of(14.7, PSI);

    private static double cfm(double inch, double psig, double coefficient, AbsolutePressure station) {
        return ChokedNozzle.freeAir(
                        Length.of(inch, INCH), coefficient, GaugePressure.of(psig, PSI), WARM, station, WARM)
                .in(CFM);
    }

    /**
     * Discharge of air through an orifice, coefficient 1, from a trade handbook (read in a copy). 0.7 %: the last of three
     * digits of small figures, and 0.3 % otherwise.
     */
    @ParameterizedTest
    @CsvSource({
        "15, .105, .420, 1.68, 6.72, 26.9, 60.5",
        "70, .300, 1.20, 4.79, 19.2, 76.7, 173",
        "80, .335, 1.34, 5.36, 21.4, 85.7, 193",
        "90, .370, 1.48, 5.92, 23.7, 94.8, 213",
        "100, .406, 1.62, 6.49, 26.0, 104, 234",
        "110, .441, 1.76, 7.05, 28.2, 113, 254",
        "125, .494, 1.98, 7.90, 31.6, 126, 284"
    })
    void agreesWithAnOrificeTable(
            double psig, double at64, double at32, double at16, double at8, double at4, double at38) {
        assertThat(cfm(1.0 / 64, psig, 1, PSIA_14_7)).isCloseTo(at64, withinPercentage(0.7));
        assertThat(cfm(1.0 / 32, psig, 1, PSIA_14_7)).isCloseTo(at32, withinPercentage(0.7));
        assertThat(cfm(1.0 / 16, psig, 1, PSIA_14_7)).isCloseTo(at16, withinPercentage(0.7));
        assertThat(cfm(1.0 / 8, psig, 1, PSIA_14_7)).isCloseTo(at8, withinPercentage(0.7));
        assertThat(cfm(1.0 / 4, psig, 1, PSIA_14_7)).isCloseTo(at4, withinPercentage(0.7));
        assertThat(cfm(3.0 / 8, psig, 1, PSIA_14_7)).isCloseTo(at38, withinPercentage(0.7));
    }

    /** Worked out apart for 14.7 psia and told at 14.696: 26.0, 104.0, 234.1 and, sharp-edged, 63.5 cfm at 100 psig. */
    @ParameterizedTest
    @CsvSource({"0.125, 1, 26.0", "0.25, 1, 104.0", "0.375, 1, 234.1", "0.25, 0.61, 63.5"})
    void agreesWithFiguresWorkedOutApart(double inch, double coefficient, double expected) {
        assertThat(cfm(inch, 100, coefficient, PSIA_14_7) * 14.7 / 14.696).isCloseTo(expected, within(0.05));
    }

    /**
     * Leak table of the US Department of Energy's tip sheet (from memory). It holds a coefficient near 0.97 already, so that
     * nothing may be multiplied by it again.
     */
    @ParameterizedTest
    @CsvSource({
        "70, 4.66, 18.62, 74.4, 167.8",
        "80, 5.24, 20.76, 83.1, 187.2",
        "90, 5.72, 23.1, 92.0, 206.6",
        "100, 6.31, 25.22, 100.9, 227.0",
        "125, 7.66, 30.65, 122.2, 275.5"
    })
    void agreesWithALeakTableForRoundedHoles(double psig, double at16, double at8, double at4, double at38) {
        assertThat(cfm(1.0 / 16, psig, ChokedNozzle.ROUNDED, PSIA_14_7)).isCloseTo(at16, withinPercentage(1.3));
        assertThat(cfm(1.0 / 8, psig, ChokedNozzle.ROUNDED, PSIA_14_7)).isCloseTo(at8, withinPercentage(1.3));
        assertThat(cfm(1.0 / 4, psig, ChokedNozzle.ROUNDED, PSIA_14_7)).isCloseTo(at4, withinPercentage(1.3));
        assertThat(cfm(3.0 / 8, psig, ChokedNozzle.ROUNDED, PSIA_14_7)).isCloseTo(at38, withinPercentage(1.3));
    }

    /** The blasting trade's table at 100 psi: 0.769, 0.769, 0.779, 0.843, 0.838, 0.797, 0.812 of a choked nozzle. */
    @ParameterizedTest
    @EnumSource
    void takesLessThanAnOpenNozzleWhileBlasting(BlastNozzle nozzle) {
        double[] ratios = {.769, .769, .779, .843, .838, .797, .812};

        double table = nozzle.flow(GaugePressure.of(100, PSI)).orElseThrow().in(CFM);

        assertThat(table / cfm(nozzle.bore().in(INCH), 100, 1, PSIA_14_7))
                .isCloseTo(ratios[nozzle.ordinal()], within(6e-4));
    }

    /** Metal Finishing's surface finishing guidebook, 2011: pressure blast, scfm (read in a copy). Within 8 %. */
    @ParameterizedTest
    @CsvSource({
        "60, 14, 30, 55, 88, 126",
        "80, 17, 38, 68, 113, 161",
        "100, 20, 45, 81, 137, 196",
        "120, 25, 55, 97, 152, 220"
    })
    void agreesWithAnotherTableOfBlastNozzles(double psig, double no2, double no3, double no4, double no5, double no6) {
        double[] printed = {no2, no3, no4, no5, no6};
        for (int i = 0; i < printed.length; i++) {
            assertThat(BlastNozzle.values()[i]
                            .flow(GaugePressure.of(psig, PSI))
                            .orElseThrow()
                            .in(CFM))
                    .isCloseTo(printed[i], withinPercentage(8));
        }
    }

    @Test
    void takesAStraightLineBetweenPrintedPressures() {
        assertThat(BlastNozzle.NO_5
                        .flow(GaugePressure.of(95, PSI))
                        .orElseThrow()
                        .in(CFM))
                .isCloseTo(131.5, within(1e-9));
        assertThat(BlastNozzle.NO_5
                        .flow(GaugePressure.of(50, PSI))
                        .orElseThrow()
                        .in(CFM))
                .isCloseTo(77, within(1e-9));
        assertThat(BlastNozzle.NO_5
                        .flow(GaugePressure.of(125, PSI))
                        .orElseThrow()
                        .in(CFM))
                .isCloseTo(168, within(1e-9));
        assertThat(BlastNozzle.NO_5.flow(GaugePressure.of(49, PSI))).isEmpty();
        assertThat(BlastNozzle.NO_5.flow(GaugePressure.of(126, PSI))).isEmpty();
    }

    /** Common practice: 1/4 in wears to 5/16 in; 81 becomes 137 cfm, +69 %. By area alone it would be +56 %. */
    @Test
    void wearsToTheNextBore() {
        BlastNozzle worn = BlastNozzle.NO_4.worn().orElseThrow();
        var at = GaugePressure.of(100, PSI);

        double more = worn.flow(at).orElseThrow().over(BlastNozzle.NO_4.flow(at).orElseThrow());

        assertThat(worn).isEqualTo(BlastNozzle.NO_5);
        assertThat(more).isCloseTo(1.69, within(5e-3));
        assertThat(Math.pow(worn.bore().metres() / BlastNozzle.NO_4.bore().metres(), 2))
                .isCloseTo(1.5625, within(1e-9));
        assertThat(BlastNozzle.NO_8.worn()).isEmpty();
    }

    /** A nozzle at the place, beside the same at sea level: the factor is that of its two flows. 5,000 ft is 12.230 psia. */
    @Test
    void needsMoreFreeAirAboveSeaLevel() {
        var high = AbsolutePressure.of(12.230, PSI);
        var seaLevel = new AbsolutePressure(101_325);

        double factor = ToolAltitude.factor(GaugePressure.of(90, PSI), high);

        assertThat(factor).isCloseTo(cfm(0.25, 90, 1, high) / cfm(0.25, 90, 1, seaLevel), within(1e-12));
        assertThat(factor).isCloseTo(1.17, within(5e-3));
        assertThat(ToolAltitude.factor(GaugePressure.of(90, PSI), seaLevel)).isEqualTo(1);
    }

    /** By hand: (110 + 14.7)/(100 + 14.7) = 1.0872. The same as two holes, one at each pressure. */
    @Test
    void carriesLeaksInProportionToAbsolutePressure() {
        var flow = MeasuredFlow.of(FlowRate.of(10, CFM), 0.1, FlowBasis.INTAKE);

        MeasuredFlow carried =
                ChokedNozzle.carried(flow, GaugePressure.of(100, PSI), GaugePressure.of(110, PSI), PSIA_14_7);

        assertThat(carried.flow().in(CFM)).isCloseTo(10.872, within(5e-4));
        assertThat(carried.standardUncertainty().in(CFM)).isCloseTo(1.0872, within(5e-5));
        assertThat(carried.flow().over(flow.flow()))
                .isCloseTo(cfm(0.1, 110, 1, PSIA_14_7) / cfm(0.1, 100, 1, PSIA_14_7), within(1e-12));
    }

    @Test
    void refusesWhatItDoesNotHoldFor() {
        assertThatThrownBy(() -> cfm(0.25, 10, 1, PSIA_14_7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> cfm(0.25, 100, 1.1, PSIA_14_7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> cfm(0.25, 100, 0, PSIA_14_7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> cfm(0, 100, 1, PSIA_14_7)).isInstanceOf(IllegalArgumentException.class);
    }
}
