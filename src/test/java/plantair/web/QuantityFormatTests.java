package plantair.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.FreeAirVolume;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;

class QuantityFormatTests {

    private final QuantityFormat us = QuantityFormat.of(UnitSet.US);
    private final QuantityFormat bar = QuantityFormat.of(UnitSet.BAR_LITRE);

    @Test
    void tellsGaugeFromAbsolutePressure() {
        var gauge = GaugePressure.of(100, PressureUnit.PSI);
        var absolute = AbsolutePressure.of(114.7, PressureUnit.PSI);

        assertThat(us.gauge(gauge)).isEqualTo("100.0 psig");
        assertThat(us.absolute(absolute)).isEqualTo("114.70 psia");
        // 1 psi = 6.894757 kPa: NIST SP 811 (from memory)
        assertThat(bar.gauge(gauge)).isEqualTo("6.89 bar(g)");
        assertThat(bar.absolute(absolute)).isEqualTo("7.908 bar(a)");
        assertThat(QuantityFormat.of(UnitSet.KPA_LITRE).gauge(gauge)).isEqualTo("689 kPa(g)");
        assertThat(QuantityFormat.of(UnitSet.KGF_CUBIC).gaugeUnit()).isEqualTo("kgf/cm²(g)");
    }

    @Test
    void showsAFlowNoSharperThanItsUncertainty() {
        var flow = FlowRate.of(34.437, FlowUnit.CFM);

        assertThat(us.flow(flow, 0.029)).isEqualTo("34.4 ± 1.0 cfm");
        assertThat(us.flowNumber(flow, 0.029)).isEqualTo("34.4");
        assertThat(us.flowUncertainty(flow, 0.029)).isEqualTo("1.0");
        assertThat(us.flow(flow)).isEqualTo("34.44 cfm");
        // 1 cfm = 0.4719474 L/s: NIST SP 811 (from memory)
        assertThat(bar.flow(flow, 0.029)).isEqualTo("16.25 ± 0.47 L/s");
    }

    @Test
    void showsANegativeFlowAndAMissingUncertainty() {
        var impossible = FlowRate.of(-2.04, FlowUnit.CFM);

        assertThat(us.flow(impossible, 0.1)).isEqualTo("-2.04 ± 0.20 cfm");
        assertThat(us.flow(FlowRate.of(0, FlowUnit.CFM), 0.1)).isEqualTo("0 ± 0 cfm");
    }

    @Test
    void writesTheOtherQuantities() {
        assertThat(us.temperature(Temperature.of(20, TemperatureUnit.CELSIUS))).isEqualTo("68.0 °F");
        assertThat(us.kelvins(12.34)).isEqualTo("12.3 K");
        assertThat(us.vessel(VesselVolume.of(120, VolumeUnit.US_GAL))).isEqualTo("120.0 US gal");
        assertThat(bar.freeAir(FreeAirVolume.of(2, VolumeUnit.CUBIC_METRE))).isEqualTo("2000 L");
        assertThat(us.elapsed(Elapsed.of(62.4, DurationUnit.SECOND))).isEqualTo("62.4 s");
        assertThat(us.elevation(Length.of(1609.344, LengthUnit.METRE))).isEqualTo("5280 ft");
        assertThat(us.bore(Length.of(2.067, LengthUnit.INCH))).isEqualTo("2.07 in");
        assertThat(us.power(Power.of(25, PowerUnit.HP))).isEqualTo("25.0 hp");
        assertThat(us.percent(0.9338)).isEqualTo("93.4 %");
        assertThat(us.percent(0.9338, 0.028)).isEqualTo("93.4 ± 2.8 %");
    }

    @Test
    void keepsSixDigitsInTheWorking() {
        var working = QuantityFormat.working(UnitSet.US);

        assertThat(working.gauge(GaugePressure.of(95, PressureUnit.PSI))).isEqualTo("95.0000 psig");
        assertThat(working.workingTime(Elapsed.of(90, DurationUnit.SECOND))).isEqualTo("1.50000 min");
        assertThat(working.workingVessel(VesselVolume.of(1, VolumeUnit.CUBIC_METRE)))
                .isEqualTo("35.3147 ft³");
    }

    /** Amounts of a year: two digits of their uncertainty, before the dot too; from a hundred no decimals. */
    @Test
    void writesAmountsNoSharperThanTheirUncertainty() {
        assertThat(QuantityFormat.amount(17_963.4, 2_401)).isEqualTo("18000 ± 2400");
        assertThat(QuantityFormat.amount(6_920.5, 3.2)).isEqualTo("6921 ± 4");
        assertThat(QuantityFormat.amount(6_920.5, 0)).isEqualTo("6921");
        assertThat(QuantityFormat.amount(15.02, 2.04)).isEqualTo("15.0 ± 2.0");
        assertThat(QuantityFormat.amount(0, 0)).isEqualTo("0");
    }

    @Test
    void writesLongTimesAndVolumesNoSharperThanTheirUncertainty() {
        var format = QuantityFormat.of(UnitSet.US);

        assertThat(format.duration(Elapsed.of(65.476, DurationUnit.SECOND), 0)).isEqualTo("65.5 s");
        assertThat(format.duration(Elapsed.of(195, DurationUnit.SECOND), 0)).isEqualTo("3.25 min");
        assertThat(format.duration(Elapsed.of(195, DurationUnit.SECOND), 0.1)).isEqualTo("3.25 ± 0.33 min");
        assertThat(format.vessel(VesselVolume.of(4738, VolumeUnit.US_GAL), 106 / 4738.0))
                .isEqualTo("4740 ± 110 US gal");
    }
}
