package plantair.testrecord;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.instrument.Calibration;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.quantity.Entered;

/**
 * An instrument as its register had it on the day of the test.
 *
 * @param kind what it reads
 * @param instrumentId id in the register
 * @param tag its tag
 * @param span of a gauge
 * @param limitPercent largest error of a gauge in percent of span
 * @param division of a gauge
 * @param accuracy largest error of an instrument that is no gauge
 * @param dueOn last day of its calibration; null without one
 * @param status on the day of the test
 */
@Embeddable
public record InstrumentCopy(
        @Enumerated(EnumType.STRING) InstrumentKind kind,
        long instrumentId,
        String tag,
        @Nullable Entered span,
        @Nullable Entered limitPercent,
        @Nullable Entered division,
        @Nullable Entered accuracy,
        @Nullable LocalDate dueOn,
        @Enumerated(EnumType.STRING) CalibrationStatus status) {

    /**
     * An instrument on a day.
     *
     * @param latest its last calibration by that day; null when there is none
     */
    public static InstrumentCopy of(Instrument instrument, @Nullable Calibration latest, LocalDate day) {
        var facts = instrument.facts();
        return new InstrumentCopy(
                facts.kind(),
                instrument.id(),
                facts.tag(),
                facts.span(),
                facts.limitPercent().orElse(null),
                facts.division(),
                facts.accuracy(),
                latest == null ? null : latest.dueOn(),
                CalibrationStatus.of(latest, day));
    }

    /** True when it may not be used without a reason. */
    public boolean isPastItsDate() {
        return status == CalibrationStatus.OVERDUE || status == CalibrationStatus.OUT_OF_ORDER;
    }
}
