package plantair.api;

import static io.swagger.v3.oas.annotations.media.Schema.RequiredMode.REQUIRED;
import static plantair.pumpup.PossibleRange.BAROMETER;
import static plantair.pumpup.PossibleRange.ELAPSED;
import static plantair.pumpup.PossibleRange.GAUGE_PRESSURE;
import static plantair.pumpup.PossibleRange.INTAKE_TEMPERATURE;
import static plantair.pumpup.PossibleRange.RECEIVER_AIR;
import static plantair.pumpup.PossibleRange.SPEED;

import com.fasterxml.jackson.annotation.JsonProperty;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.StaticHold.Place;
import plantair.pumpup.VolumePart.Kind;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.Power;
import plantair.quantity.PressureDifference;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * The readings of a test as sent. {@link RequestReader} fills these records by their components; the OpenAPI
 * description is made from them too. What is required may still be null here: then a problem says so, and nothing is
 * evaluated.
 */
record EvaluateRequest(
        @Schema(requiredMode = REQUIRED, description = "The volume between check valve and shut valve, piece by piece.")
        @Nullable
        List<Part> volumeParts,

        @Schema(description = "Station pressure as read, absolute, not reduced to sea level. This or the elevation.")
        @Limits(range = BAROMETER)
        @Nullable
        AbsolutePressure barometer,

        @Schema(description = "Elevation of the station; with a barometer it only checks it.")
        @Limits(above = -500, to = 5_000)
        @Nullable
        Length elevation,

        @Schema(requiredMode = REQUIRED) @Nullable IntakeAir intake,

        @Schema(requiredMode = REQUIRED, description = "The timed runs; three tell whether they agree.") @Nullable
        List<Run> runs,

        @Schema(description = "The pressure gauge; without it an unknown one is assumed.") @Nullable
        Gauge gauge,

        @Schema(description = "What the maker states.") @Nullable
        List<Rating> ratingPoints,

        @Nullable Motor motor,

        @Schema(description = "Swept volume of the first stage times speed.") @Limits(above = 0) @Nullable
        FlowRate displacement,

        @Schema(description = "The static hold before the runs.") @Nullable
        Hold hold,

        @Schema(description = "Shaft speed in the test.") @Limits(range = SPEED) @Nullable
        ShaftSpeed speed,

        @Schema(description = "Shaft speed of the rating.") @Limits(range = SPEED) @Nullable
        ShaftSpeed ratedSpeed) {

    /** A piece of the volume. */
    @Schema(name = "VolumePart")
    record Part(
            @Schema(requiredMode = REQUIRED, description = "How the plant calls it.") @Nullable
            String label,

            @Schema(requiredMode = REQUIRED) @Limits(above = 0) @Nullable
            VesselVolume volume,

            @Schema(description = "RECEIVER when left out; WATER takes away.") @Nullable
            Kind kind) {}

    /** The air that the compressor takes in. */
    @Schema(name = "Intake")
    record IntakeAir(
            @Schema(requiredMode = REQUIRED) @Limits(range = INTAKE_TEMPERATURE) @Nullable
            Temperature temperature,

            @Schema(description = "50 % is assumed when left out.") @Nullable
            RelativeHumidity relativeHumidity) {}

    /** One timed run. */
    @Schema(name = "Run")
    record Run(
            @Schema(requiredMode = REQUIRED, description = "Gauge pressure when the clock was started.")
            @Limits(range = GAUGE_PRESSURE)
            @Nullable
            GaugePressure start,

            @Schema(requiredMode = REQUIRED, description = "Gauge pressure when the clock was stopped, above start.")
            @Limits(range = GAUGE_PRESSURE)
            @Nullable
            GaugePressure stop,

            @Schema(requiredMode = REQUIRED) @Limits(range = ELAPSED) @Nullable
            Elapsed elapsed,

            @Limits(range = RECEIVER_AIR) @Nullable Temperature startAirTemperature,
            @Limits(range = RECEIVER_AIR) @Nullable Temperature stopAirTemperature,

            @Schema(description = "The reading after waiting with everything shut.") @Nullable
            Settled settled) {}

    /** The reading after waiting. */
    @Schema(name = "Settled")
    record Settled(
            @Schema(requiredMode = REQUIRED, description = "Gauge pressure, above the start of the run.")
            @Limits(range = GAUGE_PRESSURE)
            @Nullable
            GaugePressure pressure,

            @Schema(requiredMode = REQUIRED) @Limits(range = RECEIVER_AIR) @Nullable
            Temperature airTemperature,

            @JsonProperty("wait") @Limits(range = ELAPSED) @Nullable
            Elapsed waited) {}

    /** The pressure gauge. */
    @Schema(name = "Gauge")
    record Gauge(
            @Schema(requiredMode = REQUIRED, description = "From zero to full scale.") @Limits(above = 0) @Nullable
            PressureDifference span,

            @Schema(requiredMode = REQUIRED, description = "Largest error in percent of span.")
            @Limits(above = 0, to = 50)
            @Nullable
            Double accuracyPercent,

            @Schema(requiredMode = REQUIRED, description = "Smallest step that can be read.")
            @Limits(above = 0)
            @Nullable
            PressureDifference division) {}

    /** One point of what the maker states. */
    @Schema(name = "RatingPoint")
    record Rating(
            @Schema(requiredMode = REQUIRED) @Limits(range = GAUGE_PRESSURE) @Nullable
            GaugePressure pressure,

            @Schema(requiredMode = REQUIRED) @Limits(above = 0) @Nullable
            FlowRate flow,

            @Schema(requiredMode = REQUIRED, description = "What the flow refers to; UNKNOWN is an honest answer.")
            @Nullable
            FlowBasis basis) {}

    /** The motor: its plate, or what was measured at it, then all five. */
    @Schema(name = "Motor")
    record Motor(
            @Schema(description = "Power on the plate.") @Limits(above = 0) @Nullable
            Power power,

            @Schema(description = "Between two lines, V.") @Limits(above = 0, to = 50_000) @Nullable
            Double volts,

            @Schema(description = "In a line, A.") @Limits(above = 0, to = 10_000) @Nullable
            Double amps,

            @Schema(description = "1 or 3.") @Nullable Double phases,

            @Limits(above = 0, to = 1) @Nullable Double powerFactor,

            @Schema(description = "Shaft power over electric power.") @Limits(above = 0, to = 1) @Nullable
            Double efficiency) {}

    /** The pressure of the shut volume watched with the machine stopped. */
    @Schema(name = "Hold")
    record Hold(
            @Schema(requiredMode = REQUIRED) @Limits(range = GAUGE_PRESSURE) @Nullable
            GaugePressure start,

            @Schema(requiredMode = REQUIRED) @Limits(range = GAUGE_PRESSURE) @Nullable
            GaugePressure end,

            @Schema(requiredMode = REQUIRED) @JsonProperty("wait") @Limits(range = ELAPSED) @Nullable
            Elapsed waited,

            @Schema(requiredMode = REQUIRED, description = "Where the air goes.") @Nullable
            Place place) {}
}
