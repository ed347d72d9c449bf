package plantair.testrecord;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.Severity;
import plantair.quantity.FlowRate;

/** A result in the projection: derived from a test, rebuildable to the same digits. */
@Entity
@Table(name = "pump_up_result")
@NullUnmarked
public class StoredResult {

    @EmbeddedId
    private ResultKey key;

    private long compressorId;
    private Instant performedAt;
    private boolean currentRecord;

    @Column(name = "hand_m3_per_s")
    private double handM3PerS;

    @Column(name = "free_air_m3_per_s")
    private @Nullable Double freeAirM3PerS;

    @Column(name = "comparable_m3_per_s")
    private @Nullable Double comparableM3PerS;

    private boolean joinsTrend;

    @Column(name = "as_recorded_m3_per_s")
    private @Nullable Double asRecordedM3PerS;

    private @Nullable Long restatedBy;
    private double relativeRandom;
    private double relativeShared;
    private double relativeCombined;
    private @Nullable Double ratingRatio;

    @Embedded
    private TestMarks marks;

    @Enumerated(EnumType.STRING)
    private @Nullable Severity severity;

    @Column(length = 200_000)
    private String detail;

    protected StoredResult() {}

    /**
     * What the result was before its gauge was found wrong.
     *
     * @param calibrationId the calibration that restates it
     * @param freeAir as recorded; null when the runs were not averaged
     */
    record Restated(long calibrationId, @Nullable FlowRate freeAir) {}

    StoredResult(
            PumpUpTest test, PumpUpResult result, @Nullable Restated restated, boolean currentRecord, String detail) {
        joinsTrend = result.joinsTrend();
        restatedBy = restated == null ? null : restated.calibrationId();
        asRecordedM3PerS = restated == null ? null : siOrNull(restated.freeAir());
        key = new ResultKey(test.id(), result.methodVersion());
        compressorId = test.compressor().id();
        performedAt = test.performedAt();
        this.currentRecord = currentRecord;
        handM3PerS = result.handMethod().cubicMetresPerSecond();
        freeAirM3PerS = siOrNull(result.freeAir());
        comparableM3PerS = siOrNull(result.comparableFlow());
        relativeRandom = result.uncertainty().random();
        relativeShared = result.uncertainty().shared();
        relativeCombined = result.uncertainty().combined();
        ratingRatio = result.rating() == null ? null : result.rating().ratio();
        marks = TestMarks.of(test, result);
        severity = result.findings().isEmpty()
                ? null
                : result.findings().get(0).code().severity();
        this.detail = detail;
    }

    private static @Nullable Double siOrNull(@Nullable FlowRate flow) {
        return flow == null ? null : flow.cubicMetresPerSecond();
    }

    public long testId() {
        return key.testId();
    }

    public String methodVersion() {
        return key.methodVersion();
    }

    public long compressorId() {
        return compressorId;
    }

    public Instant performedAt() {
        return performedAt;
    }

    /** False once another test supersedes this one. */
    public boolean isCurrent() {
        return currentRecord;
    }

    public FlowRate handMethod() {
        return new FlowRate(handM3PerS);
    }

    /** Free air delivered at intake conditions; empty when the runs were not averaged. */
    public Optional<FlowRate> freeAir() {
        return Optional.ofNullable(freeAirM3PerS).map(FlowRate::new);
    }

    /** False when the test does not show the machine's wear. */
    public boolean joinsTrend() {
        return joinsTrend;
    }

    /** Free air delivered before the gauge was found wrong; empty when it was not, or the runs were not averaged. */
    public Optional<FlowRate> asRecorded() {
        return Optional.ofNullable(asRecordedM3PerS).map(FlowRate::new);
    }

    /** The calibration that restates the result; empty when none does. */
    public Optional<Long> restatedBy() {
        return Optional.ofNullable(restatedBy);
    }

    /** Free air delivered, at rated speed when that is known; what is followed over time. */
    public Optional<FlowRate> comparable() {
        return Optional.ofNullable(comparableM3PerS).map(FlowRate::new);
    }

    public double relativeRandom() {
        return relativeRandom;
    }

    public double relativeShared() {
        return relativeShared;
    }

    /** Of any statement about the absolute flow: random and shared together. */
    public double relativeCombined() {
        return relativeCombined;
    }

    public Optional<Double> ratingRatio() {
        return Optional.ofNullable(ratingRatio);
    }

    /** The worst severity of its findings; empty when there are none. */
    public Optional<Severity> severity() {
        return Optional.ofNullable(severity);
    }

    /** Between which marks it was made, and the errors it shares with other tests. */
    public TestMarks marks() {
        return marks;
    }

    String detail() {
        return detail;
    }

    void supersede() {
        currentRecord = false;
    }
}
