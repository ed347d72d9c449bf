package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
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

/** Readings of a test, built from the few that matter. Dry air of 20 °C everywhere unless said otherwise. */
final class SampleReadings {

    private final PressureUnit pressures;
    private final TemperatureUnit temperatures;
    private final List<VolumePart> parts = new ArrayList<>();
    private final List<RunReadings> runs = new ArrayList<>();
    private final List<RatingPoint> ratings = new ArrayList<>();
    private @Nullable AbsolutePressure barometer;
    private @Nullable AbsolutePressure usualBarometer;
    private @Nullable Length elevation;
    private Temperature intake = Temperature.of(20, TemperatureUnit.CELSIUS);
    private @Nullable RelativeHumidity humidity = new RelativeHumidity(0);
    private AirTemperature treatment = AirTemperature.MEASURED;
    private @Nullable ShaftSpeed speed;
    private @Nullable ShaftSpeed ratedSpeed;
    private @Nullable GaugePressure allowable;
    private @Nullable LearnedFactor learned;
    private Instruments instruments = Instruments.UNNAMED;
    private @Nullable StaticHold hold;
    private MachineData machine = MachineData.UNKNOWN;

    private SampleReadings(PressureUnit pressures, TemperatureUnit temperatures) {
        this.pressures = pressures;
        this.temperatures = temperatures;
    }

    static SampleReadings in(PressureUnit pressures, TemperatureUnit temperatures) {
        return new SampleReadings(pressures, temperatures);
    }

    /** A good test of a 300 L receiver, from 6 to 9 bar, with a test gauge and a hold, in which no rule finds fault. */
    static SampleReadings good() {
        return in(PressureUnit.BAR, TemperatureUnit.CELSIUS)
                .volume(300, VolumeUnit.LITRE)
                .barometer(1.0)
                .humidity(0.1)
                .gauge(16, 0.0025, 0.02)
                .instruments(0.3, 0.5, 100)
                .hold(9, 9, 300, StaticHold.Place.TEST_VOLUME)
                .run(6, 9, 60)
                .run(6, 9, 60.2)
                .run(6, 9, 59.9)
                .rating(6, 15.6, FlowUnit.LITRE_PER_SECOND, FlowBasis.INTAKE)
                .rating(10, 14.6, FlowUnit.LITRE_PER_SECOND, FlowBasis.INTAKE);
    }

    SampleReadings volume(double size, VolumeUnit unit) {
        return part(VolumePart.Kind.RECEIVER, size, unit);
    }

    SampleReadings part(VolumePart.Kind kind, double size, VolumeUnit unit) {
        parts.add(new VolumePart(kind.name(), kind, VesselVolume.of(size, unit)));
        return this;
    }

    SampleReadings barometer(double read) {
        barometer = AbsolutePressure.of(read, pressures);
        return this;
    }

    SampleReadings noBarometer() {
        barometer = null;
        return this;
    }

    SampleReadings usualBarometer(double usual) {
        usualBarometer = AbsolutePressure.of(usual, pressures);
        return this;
    }

    SampleReadings elevation(double metres) {
        elevation = new Length(metres);
        return this;
    }

    SampleReadings intake(double temperature) {
        intake = Temperature.of(temperature, temperatures);
        return this;
    }

    SampleReadings humidity(double fraction) {
        humidity = new RelativeHumidity(fraction);
        return this;
    }

    SampleReadings humidityNotRead() {
        humidity = null;
        return this;
    }

    SampleReadings air(AirTemperature how) {
        treatment = how;
        return this;
    }

    SampleReadings noRuns() {
        runs.clear();
        return this;
    }

    /** A run whose air is as warm as the intake is at this moment of building, at every reading. */
    SampleReadings run(double start, double stop, double seconds) {
        return add(bare(start, stop, seconds).withAir(intake, intake));
    }

    SampleReadings run(double start, double stop, double seconds, double startAir, double stopAir) {
        return add(bare(start, stop, seconds)
                .withAir(Temperature.of(startAir, temperatures), Temperature.of(stopAir, temperatures)));
    }

    SampleReadings settledRun(double start, double stop, double seconds, double settled, double air) {
        return add(bare(start, stop, seconds)
                .withSettled(GaugePressure.of(settled, pressures), Temperature.of(air, temperatures)));
    }

    private RunReadings bare(double start, double stop, double seconds) {
        return RunReadings.of(
                GaugePressure.of(start, pressures), GaugePressure.of(stop, pressures), new Elapsed(seconds));
    }

    SampleReadings add(RunReadings run) {
        runs.add(run);
        return this;
    }

    SampleReadings speeds(double read, double rated) {
        speed = new ShaftSpeed(read);
        ratedSpeed = new ShaftSpeed(rated);
        return this;
    }

    SampleReadings noRatings() {
        ratings.clear();
        return this;
    }

    SampleReadings rating(double pressure, double flow, FlowUnit unit, FlowBasis basis) {
        ratings.add(new RatingPoint(GaugePressure.of(pressure, pressures), FlowRate.of(flow, unit), basis));
        return this;
    }

    SampleReadings allowable(double pressure) {
        allowable = GaugePressure.of(pressure, pressures);
        return this;
    }

    /** Part is the limit of error over span. */
    SampleReadings gauge(double span, double part, double division, GaugeError... errors) {
        var gauge = new GaugeAccuracy(difference(span), part, difference(division), List.of(errors));
        return instruments(gauge, instruments.clockU(), instruments.thermometerU(), instruments.barometerU());
    }

    SampleReadings noGauge() {
        return instruments(null, instruments.clockU(), instruments.thermometerU(), instruments.barometerU());
    }

    /** Seconds, kelvin, pascal. */
    SampleReadings instruments(double clockU, double thermometerU, double barometerU) {
        return instruments(instruments.gauge(), clockU, thermometerU, barometerU);
    }

    private SampleReadings instruments(
            @Nullable GaugeAccuracy gauge, double clockU, double thermometerU, double barometerU) {
        instruments = new Instruments(gauge, clockU, thermometerU, barometerU);
        return this;
    }

    GaugeError error(double reading, double readsHighBy) {
        return new GaugeError(GaugePressure.of(reading, pressures), difference(readsHighBy));
    }

    private PressureDifference difference(double size) {
        return PressureDifference.of(size, pressures);
    }

    SampleReadings hold(double from, double to, double seconds, StaticHold.Place place) {
        hold = new StaticHold(
                GaugePressure.of(from, pressures), GaugePressure.of(to, pressures), new Elapsed(seconds), place);
        return this;
    }

    SampleReadings noHold() {
        hold = null;
        return this;
    }

    SampleReadings learned(LearnedFactor factor) {
        learned = factor;
        return this;
    }

    SampleReadings machine(MachineData known) {
        machine = known;
        return this;
    }

    PumpUpReadings readings() {
        return new PumpUpReadings(
                parts,
                new Station(barometer, usualBarometer, elevation),
                intake,
                humidity,
                treatment,
                runs,
                speed,
                ratedSpeed,
                ratings,
                allowable,
                new Circumstances(instruments, hold, machine, learned));
    }

    /** The result with the compressibility of air. */
    PumpUpResult result() {
        return new PumpUpMethodV1(Compressibility.DRY_AIR).evaluate(readings());
    }

    /** The result of the ideal gas, as in textbooks. */
    PumpUpResult ideal() {
        return new PumpUpMethodV1(Compressibility.IDEAL).evaluate(readings());
    }
}
