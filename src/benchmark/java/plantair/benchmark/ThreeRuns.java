package plantair.benchmark;

import java.util.List;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.Circumstances;
import plantair.pumpup.GaugeAccuracy;
import plantair.pumpup.Instruments;
import plantair.pumpup.MachineData;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.RatingPoint;
import plantair.pumpup.RunReadings;
import plantair.pumpup.Station;
import plantair.pumpup.VolumePart;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;

/** The test of docs/worked-example.md, read from a named gauge: 0 to 16 bar, 1 %, divided in tenths of a bar. */
final class ThreeRuns {

    private ThreeRuns() {}

    static PumpUpReadings measured() {
        return new PumpUpReadings(
                List.of(
                        part("Receiver", VolumePart.Kind.RECEIVER, 430),
                        part("Pipe to valve", VolumePart.Kind.PIPE, 16),
                        part("Water left", VolumePart.Kind.WATER, 2)),
                new Station(null, null, new Length(240)),
                celsius(17),
                new RelativeHumidity(0.48),
                AirTemperature.MEASURED,
                List.of(run(78.4, 26, 32.5), run(78.9, 27, 33), run(78.6, 27.5, 33.5)),
                new ShaftSpeed(972),
                new ShaftSpeed(980),
                List.of(rating(6, 16.9), rating(9, 16.2)),
                null,
                new Circumstances(instruments(), null, MachineData.UNKNOWN));
    }

    private static VolumePart part(String label, VolumePart.Kind kind, double litres) {
        return new VolumePart(label, kind, VesselVolume.of(litres, VolumeUnit.LITRE));
    }

    private static RunReadings run(double seconds, double startAir, double stopAir) {
        return RunReadings.of(bar(5.2), bar(8.4), new Elapsed(seconds)).withAir(celsius(startAir), celsius(stopAir));
    }

    private static RatingPoint rating(double pressure, double litresPerSecond) {
        FlowRate flow = FlowRate.of(litresPerSecond, FlowUnit.LITRE_PER_SECOND);
        return new RatingPoint(bar(pressure), flow, FlowBasis.INTAKE);
    }

    private static Instruments instruments() {
        Instruments others = Instruments.UNNAMED;
        var gauge = new GaugeAccuracy(new PressureDifference(16e5), 0.01, new PressureDifference(1e4), List.of());
        return new Instruments(gauge, others.clockU(), others.thermometerU(), others.barometerU());
    }

    private static GaugePressure bar(double value) {
        return GaugePressure.of(value, PressureUnit.BAR);
    }

    private static Temperature celsius(double value) {
        return Temperature.of(value, TemperatureUnit.CELSIUS);
    }
}
