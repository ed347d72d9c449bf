package plantair.pumpup;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.GaugePressure;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * Everything a result depends on.
 *
 * @param volumeParts receivers, pipes and water; net volume above zero (M2)
 * @param station where the station pressure comes from
 * @param intakeTemperature air at the intake
 * @param humidityRead relative humidity at the intake; null when not read, and then taken as a half
 * @param airTemperature how the receiver air was treated
 * @param runs one or more, all of that treatment
 * @param speed shaft speed in the test; null when not read
 * @param ratedSpeed shaft speed of the rating; null when not known
 * @param ratingPoints what the maker states; may be empty
 * @param allowablePressure lowest MAWP of the receivers in the test; null when not known
 * @param circumstances what bears on how far the result can be trusted
 */
public record PumpUpReadings(
        List<VolumePart> volumeParts,
        Station station,
        Temperature intakeTemperature,
        @Nullable RelativeHumidity humidityRead,
        AirTemperature airTemperature,
        List<RunReadings> runs,
        @Nullable ShaftSpeed speed,
        @Nullable ShaftSpeed ratedSpeed,
        List<RatingPoint> ratingPoints,
        @Nullable GaugePressure allowablePressure,
        Circumstances circumstances) {

    /** Halfway between dry and wet; at most 2 % of the flow at 35 °C. Our own choice. */
    private static final RelativeHumidity ASSUMED_HUMIDITY = new RelativeHumidity(0.5);

    /** @throws IllegalArgumentException when there is no volume or no run, or a run lacks what the treatment needs */
    public PumpUpReadings {
        volumeParts = List.copyOf(volumeParts);
        runs = List.copyOf(runs);
        ratingPoints = List.copyOf(ratingPoints);
        if (!holdsAir(volumeParts)) {
            throw new IllegalArgumentException("net volume must be positive");
        }
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("at least one run is needed");
        }
        for (RunReadings run : runs) {
            boolean complete = switch (airTemperature) {
                case MEASURED -> run.startAir() != null && run.stopAir() != null;
                case SETTLED -> run.settled() != null && run.settledAir() != null;
                case NOT_MEASURED -> true;
            };
            if (!complete) {
                throw new IllegalArgumentException("run lacks readings for " + airTemperature);
            }
        }
    }

    /** Readings of which no circumstances are known. */
    public PumpUpReadings(
            List<VolumePart> volumeParts,
            Station station,
            Temperature intakeTemperature,
            @Nullable RelativeHumidity humidityRead,
            AirTemperature airTemperature,
            List<RunReadings> runs,
            @Nullable ShaftSpeed speed,
            @Nullable ShaftSpeed ratedSpeed,
            List<RatingPoint> ratingPoints,
            @Nullable GaugePressure allowablePressure) {
        this(
                volumeParts,
                station,
                intakeTemperature,
                humidityRead,
                airTemperature,
                runs,
                speed,
                ratedSpeed,
                ratingPoints,
                allowablePressure,
                Circumstances.UNKNOWN);
    }

    /** True when the parts leave a net gas volume above zero. */
    public static boolean holdsAir(List<VolumePart> parts) {
        return netM3(parts) > 0;
    }

    /**
     * The net gas volume of some parts (M2).
     *
     * @throws IllegalArgumentException when they hold no air
     */
    public static VesselVolume netVolume(List<VolumePart> parts) {
        return new VesselVolume(netM3(parts));
    }

    /** The same with the errors of the gauge's certificate taken off every pressure of the runs and the hold. */
    public PumpUpReadings corrected() {
        GaugeAccuracy gauge = circumstances.instruments().gauge();
        if (gauge == null || gauge.errors().isEmpty()) {
            return this;
        }
        return new PumpUpReadings(
                volumeParts,
                station,
                intakeTemperature,
                humidityRead,
                airTemperature,
                runs.stream().map(run -> run.corrected(gauge)).toList(),
                speed,
                ratedSpeed,
                ratingPoints,
                allowablePressure,
                circumstances.corrected(gauge));
    }

    /** The free air at the intake. */
    public Intake intake() {
        return new Intake(
                station.pressure(), intakeTemperature, humidityRead == null ? ASSUMED_HUMIDITY : humidityRead);
    }

    /** Plainly from left to right; how a stream sums depends on the Java version. */
    private static double netM3(List<VolumePart> parts) {
        return parts.stream().mapToDouble(VolumePart::signedM3).reduce(0, Double::sum);
    }

    /** Net gas volume Σ receivers + Σ pipes − water (M2). */
    public VesselVolume netVolume() {
        return new VesselVolume(netM3(volumeParts));
    }
}
