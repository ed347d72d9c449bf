package plantair.testrecord;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.instrument.AsFound;
import plantair.instrument.Calibration;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.pumpup.GaugeAccuracy;
import plantair.pumpup.GaugeError;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;

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

    /**
     * How far a gauge can be trusted.
     *
     * @param errors what a certificate found; may be empty
     * @return empty for another instrument, or when span, limit or division are not known
     */
    public Optional<GaugeAccuracy> gaugeAccuracy(List<AsFound> errors) {
        if (span == null || limitPercent == null || division == null) {
            return Optional.empty();
        }
        return Optional.of(new GaugeAccuracy(
                PressureDifference.of(span),
                limitPercent.part(),
                PressureDifference.of(division),
                errors.stream()
                        .map(point ->
                                new GaugeError(GaugePressure.of(point.reading()), PressureDifference.of(point.error())))
                        .toList()));
    }

    /** True when it may not be used without a reason. */
    public boolean isPastItsDate() {
        return status == CalibrationStatus.OVERDUE || status == CalibrationStatus.OUT_OF_ORDER;
    }
}
