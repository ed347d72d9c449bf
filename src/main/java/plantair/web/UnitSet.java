package plantair.web;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.DurationUnit;
import plantair.quantity.FlowUnit;
import plantair.quantity.LengthUnit;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VolumeUnit;

/** The units in which a person wants to see results. Never changes a record. A controller takes it as a parameter. */
public enum UnitSet {
    /** psi, cfm, US gallons, degrees Fahrenheit. */
    US(PressureUnit.PSI, FlowUnit.CFM, VolumeUnit.US_GAL, VolumeUnit.CUBIC_FOOT, DurationUnit.MINUTE),
    /** bar and litres a second. */
    BAR_LITRE(PressureUnit.BAR, FlowUnit.LITRE_PER_SECOND, VolumeUnit.LITRE, VolumeUnit.LITRE, DurationUnit.SECOND),
    /** bar and cubic metres a minute. */
    BAR_CUBIC(
            PressureUnit.BAR,
            FlowUnit.CUBIC_METRE_PER_MINUTE,
            VolumeUnit.LITRE,
            VolumeUnit.CUBIC_METRE,
            DurationUnit.MINUTE),
    /** kilopascals and litres a second. */
    KPA_LITRE(PressureUnit.KPA, FlowUnit.LITRE_PER_SECOND, VolumeUnit.LITRE, VolumeUnit.LITRE, DurationUnit.SECOND),
    /** kilogram-force a square centimetre and cubic metres a minute. */
    KGF_CUBIC(
            PressureUnit.KGF_CM2,
            FlowUnit.CUBIC_METRE_PER_MINUTE,
            VolumeUnit.LITRE,
            VolumeUnit.CUBIC_METRE,
            DurationUnit.MINUTE);

    /** Name of the cookie that keeps the preference. */
    public static final String COOKIE = "units";

    private final PressureUnit pressure;
    private final FlowUnit flow;
    private final VolumeUnit vessel;
    private final VolumeUnit workingVolume;
    private final DurationUnit workingTime;

    UnitSet(PressureUnit pressure, FlowUnit flow, VolumeUnit vessel, VolumeUnit workingVolume, DurationUnit time) {
        this.pressure = pressure;
        this.flow = flow;
        this.vessel = vessel;
        this.workingVolume = workingVolume;
        this.workingTime = time;
    }

    /** The set of this name; {@link #US} when there is none. */
    public static UnitSet byName(@Nullable String name) {
        return Stream.of(values())
                .filter(set -> set.name().equals(name))
                .findFirst()
                .orElse(US);
    }

    /** Gauge and absolute pressure. */
    public PressureUnit pressure() {
        return pressure;
    }

    /** What the local weather station gives. */
    public PressureUnit barometer() {
        return this == US ? PressureUnit.IN_HG : PressureUnit.HPA;
    }

    /** Flow of air. */
    public FlowUnit flow() {
        return flow;
    }

    /** What a receiver holds. */
    public VolumeUnit vessel() {
        return vessel;
    }

    /** Volumes in the working of a test, so that volume over time gives the flow's unit. */
    public VolumeUnit workingVolume() {
        return workingVolume;
    }

    /** Time in the working of a test. */
    public DurationUnit workingTime() {
        return workingTime;
    }

    /** Temperature. */
    public TemperatureUnit temperature() {
        return this == US ? TemperatureUnit.FAHRENHEIT : TemperatureUnit.CELSIUS;
    }

    /** Height above the sea, length of pipe. */
    public LengthUnit elevation() {
        return this == US ? LengthUnit.FOOT : LengthUnit.METRE;
    }

    /** Bore of a pipe. */
    public LengthUnit bore() {
        return this == US ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    }

    /** Power. */
    public PowerUnit power() {
        return this == US ? PowerUnit.HP : PowerUnit.KW;
    }
}
