package plantair.leaktest;

import jakarta.persistence.Embeddable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Compressor;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.supply.CapacityPart;
import plantair.testrecord.MeasuredOutput;

/**
 * A compressor that ran in a leak test, with what it delivers: as typed, or copied from its newest trusted test on the day
 * of recording, so that later tests move no result.
 *
 * @param compressorId the machine
 * @param label its tag
 * @param capacity free air at the intake as typed; null when it was measured
 * @param capacityAt gauge pressure of that
 * @param capacityPercent how far it may be off, 95 %
 * @param measuredTestId the test; null when the capacity was typed
 * @param measuredOn its day
 * @param measuredFlow free air at the intake, m³/s
 * @param measuredAt gauge pressure of that, Pa
 * @param measuredRandom relative standard uncertainty that it shares with no other machine
 * @param measuredShared what it shares with others; null for nothing
 */
@Embeddable
public record MachineCopy(
        long compressorId,
        String label,
        @Nullable Entered capacity,
        @Nullable Entered capacityAt,
        @Nullable Entered capacityPercent,
        @Nullable Long measuredTestId,
        @Nullable LocalDate measuredOn,
        @Nullable Double measuredFlow,
        @Nullable Double measuredAt,
        @Nullable Double measuredRandom,
        @Nullable SharedParts measuredShared) {

    /** What was typed is taken as known with a probability of 95 %. */
    private static final double COVERAGE = 2;

    /** A machine as its newest trusted test has it. */
    public static MachineCopy of(Compressor compressor, MeasuredOutput output) {
        return new MachineCopy(
                compressor.id(),
                compressor.tag(),
                null,
                null,
                null,
                output.testId(),
                output.on(),
                output.flow().cubicMetresPerSecond(),
                output.at().pascals(),
                output.relativeRandom(),
                output.shared().isEmpty() ? null : new SharedParts(output.shared()));
    }

    /** A machine as somebody typed it. */
    public static MachineCopy of(Compressor compressor, Entered capacity, Entered at, Entered percent) {
        return new MachineCopy(
                compressor.id(), compressor.tag(), capacity, at, percent, null, null, null, null, null, null);
    }

    /** Whether the capacity comes from a test and not from what somebody typed. */
    public boolean isMeasured() {
        return measuredTestId != null;
    }

    /** The capacity at a pressure; empty where it is known too far from that. */
    public Optional<CapacityPart> at(GaugePressure pressure) {
        return output().part(label, pressure);
    }

    private MeasuredOutput output() {
        if (capacity == null) {
            return new MeasuredOutput(
                    Objects.requireNonNull(measuredTestId),
                    compressorId,
                    Objects.requireNonNull(measuredOn),
                    new FlowRate(Objects.requireNonNull(measuredFlow)),
                    new GaugePressure(Objects.requireNonNull(measuredAt)),
                    Objects.requireNonNull(measuredRandom),
                    measuredShared == null ? List.of() : measuredShared.parts());
        }
        return new MeasuredOutput(
                0,
                compressorId,
                LocalDate.EPOCH,
                FlowRate.of(capacity),
                GaugePressure.of(Objects.requireNonNull(capacityAt)),
                Objects.requireNonNull(capacityPercent).part() / COVERAGE,
                List.of());
    }
}
