package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.PressureUnit.BAR;
import static plantair.quantity.TemperatureUnit.CELSIUS;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plantair.pumpup.CurveBudget.Source;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/** Every part of S22 by hand. */
class CurveBudgetTests {

    private static final FlowAtPressure FLOW =
            new FlowAtPressure(bar(7), new FlowRate(0.01), null, 0.004, 6, 0.1, 2, 9, bar(5), bar(9));

    private static GaugePressure bar(double value) {
        return GaugePressure.of(value, BAR);
    }

    private static TimedFill fill(boolean air, GaugeAccuracy gauge) {
        RunReadings run = RunReadings.of(bar(3), bar(9), new Elapsed(200));
        RunReadings read = air ? run.withAir(Temperature.of(20, CELSIUS), Temperature.of(32, CELSIUS)) : run;
        var readings = new PumpUpReadings(
                List.of(
                        new VolumePart("R-1", VolumePart.Kind.RECEIVER, new VesselVolume(0.4), 0.02),
                        new VolumePart("R-2", VolumePart.Kind.RECEIVER, new VesselVolume(0.1), 0.06)),
                new Station(AbsolutePressure.of(1, BAR), null, null),
                Temperature.of(20, CELSIUS),
                new RelativeHumidity(0),
                air ? AirTemperature.MEASURED : AirTemperature.NOT_MEASURED,
                List.of(read),
                null,
                null,
                List.of(),
                null,
                new Circumstances(new Instruments(null, 0.3, 2, 500), null, MachineData.UNKNOWN));
        List<TimedPressure> marks = IntStream.range(0, 13)
                .mapToObj(i -> new TimedPressure(16 * i, bar(3 + 0.5 * i)))
                .toList();
        return TimedFill.ofLog(readings, marks, gauge);
    }

    private static double part(CurveBudget budget, Source source) {
        return budget.parts().stream()
                .filter(part -> part.source() == source)
                .findFirst()
                .orElseThrow()
                .relative();
    }

    /** Volume √(0.8² · 2 %² + 0.2² · 6 %²) = 2 %; station 500 Pa of 1 bar; unknown gauge 3 %, as 12 kPa of 4 bar. */
    @Test
    void namesEveryPartOfTheHandFigure() {
        CurveBudget budget = fill(false, null).budget(FLOW);

        assertThat(budget.parts()).hasSize(5);
        assertThat(part(budget, Source.SCATTER)).isEqualTo(0.004);
        assertThat(part(budget, Source.CURVE)).isEqualTo(0.0025);
        assertThat(part(budget, Source.GAUGE)).isEqualTo(0.03);
        assertThat(part(budget, Source.VOLUME)).isCloseTo(0.02, within(1e-12));
        assertThat(part(budget, Source.STATION)).isCloseTo(0.005, within(1e-12));
        assertThat(budget.combined()).isCloseTo(Math.sqrt(16e-6 + 6.25e-6 + 9e-4 + 4e-4 + 25e-6), within(1e-12));
    }

    /** 12 K between start and stop: 12/√12 K beside the 2 K of the thermometer, of 299.15 K; es(20 °C) is 2,339 Pa. */
    @Test
    void countsWhatTheAirWarmedBy() {
        var gauge = new GaugeAccuracy(PressureDifference.of(16, BAR), 0.01, PressureDifference.of(0.1, BAR), List.of());

        CurveBudget budget = fill(true, gauge).budget(FLOW);

        assertThat(part(budget, Source.RECEIVER_AIR)).isCloseTo(4 / 299.15, within(1e-12));
        assertThat(part(budget, Source.INTAKE_AIR)).isCloseTo(Math.hypot(2 / 293.15, 0.1 * 2339 / 1e5), within(1e-6));
        assertThat(part(budget, Source.GAUGE)).isEqualTo(FLOW.relativeGauge(gauge));
    }

    @Test
    void takesTheErrorsOfTheGaugeOffTheMarks() {
        var high = new GaugeError(bar(5), PressureDifference.of(0.2, BAR));
        var gauge =
                new GaugeAccuracy(PressureDifference.of(16, BAR), 0.01, PressureDifference.of(0.1, BAR), List.of(high));

        TimedFill fill = fill(false, gauge);

        assertThat(fill.rise().points().get(0).pressure().in(BAR)).isCloseTo(2.8, within(1e-12));
        assertThat(fill.rise().points()).hasSize(13);
    }

    @Test
    void knowsTheAirOnlyWhereEveryRunHasIt() {
        assertThat(fill(false, null).at(bar(6)).flow().orElseThrow().freeAir()).isNull();
        FlowAtPressure warm = fill(true, null).at(bar(6)).flow().orElseThrow();
        assertThat(warm.freeAir()).isNotNull();
        assertThat(warm.freeAir().over(warm.byHand())).isCloseTo(293.15 / 299.15, within(0.01));
    }
}
