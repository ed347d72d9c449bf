package plantair.history;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Severity;
import plantair.testrecord.ResultLine;
import plantair.trend.BaselineComparison;
import plantair.trend.Standing;
import plantair.trend.TrendCode;

/** What the overview says of a machine: derived from its tests, rebuildable to the same digits. */
@Entity
@NullUnmarked
public class MachineState {

    @Id
    private Long compressorId;

    private long lastTestId;
    private Instant lastAt;

    @Enumerated(EnumType.STRING)
    private Standing standing;

    @Enumerated(EnumType.STRING)
    private TrendCode trendCode;

    @Enumerated(EnumType.STRING)
    private @Nullable Severity worstSeverity;

    @Enumerated(EnumType.STRING)
    private NextStep nextStep;

    private @Nullable LocalDate nextStepBy;
    private int rankNumber;
    private double part;

    @Column(name = "part_u")
    private @Nullable Double partU;

    @Column(length = 20_000)
    private String detail;

    protected MachineState() {}

    MachineState(ResultLine last, Judgement judgement, String detail) {
        compressorId = last.compressorId();
        lastTestId = last.testId();
        lastAt = last.performedAt();
        worstSeverity = last.severity();
        standing = judgement.standing();
        trendCode = judgement.trend();
        nextStep = judgement.next().step();
        nextStepBy = judgement.next().day();
        rankNumber = judgement.rank();
        part = judgement.part().map(BaselineComparison::ratio).orElse(1.0);
        partU = judgement.part().map(BaselineComparison::standardUncertainty).orElse(null);
        this.detail = detail;
    }

    public long compressorId() {
        return compressorId;
    }

    public long lastTestId() {
        return lastTestId;
    }

    public Instant lastAt() {
        return lastAt;
    }

    public Standing standing() {
        return standing;
    }

    public TrendCode trendCode() {
        return trendCode;
    }

    /** Of the worst finding of the last test; empty when there is none. */
    public Optional<Severity> worstSeverity() {
        return Optional.ofNullable(worstSeverity);
    }

    public NextStep nextStep() {
        return nextStep;
    }

    /** The day that belongs to the next step; empty where it has none. */
    public Optional<LocalDate> nextStepBy() {
        return Optional.ofNullable(nextStepBy);
    }

    /** Worst lowest. */
    public int rank() {
        return rankNumber;
    }

    /** The last test that joins the trend as a part of its baseline; 1 where there is no comparison. */
    public double part() {
        return part;
    }

    /** Standard uncertainty of that part; empty where there is no comparison. */
    public Optional<Double> partU() {
        return Optional.ofNullable(partU);
    }

    String detail() {
        return detail;
    }
}
