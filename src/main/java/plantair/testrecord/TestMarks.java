package plantair.testrecord;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.Comparator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plantair.instrument.InstrumentKind;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.Uncertainty.SharedWith;
import plantair.quantity.GaugePressure;

/**
 * Between which marks a test was made, and which errors it shares with others; part of the projection.
 *
 * @param midPressurePa gauge pressure the flow belongs to
 * @param bandPa rise
 * @param gaugeId the gauge; null when none was named
 * @param gaugeU relative standard uncertainty from the gauge
 * @param thermometerId the thermometer; null when none was named
 * @param thermometerU relative standard uncertainty from the thermometer
 * @param volumeKey names the receivers and pipes
 * @param volumeU relative standard uncertainty from their volume
 * @param airTemperature how the receiver air was treated
 * @param methodU relative standard uncertainty from that
 */
@Embeddable
public record TestMarks(
        double midPressurePa,
        double bandPa,
        @Nullable Long gaugeId,
        @Column(name = "gauge_u") double gaugeU,
        @Nullable Long thermometerId,
        @Column(name = "thermometer_u") double thermometerU,
        @Column(length = 400) String volumeKey,
        @Column(name = "volume_u") double volumeU,
        @Enumerated(EnumType.STRING) AirTemperature airTemperature,
        @Column(name = "method_u") double methodU) {

    static TestMarks of(PumpUpTest test, PumpUpResult result) {
        var budget = result.uncertainty();
        return new TestMarks(
                result.midPressure().pascals(),
                result.band().pascals(),
                instrument(test, InstrumentKind.GAUGE),
                budget.sharedWith(SharedWith.GAUGE),
                instrument(test, InstrumentKind.THERMOMETER),
                budget.sharedWith(SharedWith.THERMOMETER),
                volumeKey(test),
                budget.sharedWith(SharedWith.VOLUME),
                result.airTemperature(),
                budget.sharedWith(SharedWith.METHOD));
    }

    private static @Nullable Long instrument(PumpUpTest test, InstrumentKind kind) {
        return test.instruments().stream()
                .filter(copy -> copy.kind() == kind)
                .map(InstrumentCopy::instrumentId)
                .findFirst()
                .orElse(null);
    }

    private static String volumeKey(PumpUpTest test) {
        return test.volumes().stream()
                .sorted(Comparator.comparing(VolumeCopy::kind).thenComparing(VolumeCopy::sourceId))
                .map(copy -> copy.kind() + " " + copy.sourceId())
                .collect(Collectors.joining(", "));
    }

    /** Pressure the flow belongs to. */
    public GaugePressure midPressure() {
        return new GaugePressure(midPressurePa);
    }

    /** Mark at which the clock was started. */
    public GaugePressure start() {
        return new GaugePressure(midPressurePa - bandPa / 2);
    }

    /** Mark at which it was stopped. */
    public GaugePressure stop() {
        return new GaugePressure(midPressurePa + bandPa / 2);
    }
}
