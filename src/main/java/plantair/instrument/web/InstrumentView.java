package plantair.instrument.web;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.instrument.Calibration;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.quantity.Entered;
import plantair.quantity.PressureDifference;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.TypedText;
import plantair.web.UnitSet;

/**
 * An instrument as pages show it; a fact is null when it is not known or not of this kind.
 *
 * @param named id and tag
 * @param kind code of what it measures
 * @param site name of the site where it is kept; null when it is carried between sites
 * @param maker maker and model, may be empty
 * @param serialNumber may be empty
 * @param span as typed and, of a gauge, in the person's unit
 * @param grade code of the grade of a gauge
 * @param gradePercent largest error in percent of span, typed
 * @param accuracy largest error either way, typed
 * @param division smallest step
 * @param intervalMonths how long a calibration counts
 * @param note free text
 * @param inService false once it is retired
 * @param status by its last calibration
 * @param dueOn last day that one counts
 */
record InstrumentView(
        Named named,
        String kind,
        @Nullable String site,
        String maker,
        String serialNumber,
        @Nullable String span,
        @Nullable String grade,
        @Nullable String gradePercent,
        @Nullable String accuracy,
        @Nullable String division,
        @Nullable Integer intervalMonths,
        String note,
        boolean inService,
        Status status,
        @Nullable LocalDate dueOn) {

    /**
     * An instrument's address and name.
     *
     * @param id its id
     * @param tag how the plant calls it
     */
    record Named(long id, String tag) {}

    static InstrumentView of(Instrument instrument, @Nullable Calibration latest, Status status, UnitSet units) {
        var facts = instrument.facts();
        boolean isGauge = facts.kind() == InstrumentKind.GAUGE;
        return new InstrumentView(
                new Named(instrument.id(), facts.tag()),
                facts.kind().name(),
                facts.keptAt() == null ? null : facts.keptAt().name(),
                facts.maker(),
                facts.serialNumber(),
                text(facts.span(), isGauge, units),
                facts.grade() == null ? null : facts.grade().name(),
                text(facts.gradePercent(), false, units),
                text(facts.accuracy(), false, units),
                text(facts.division(), isGauge, units),
                facts.intervalMonths(),
                facts.note(),
                facts.inService(),
                status,
                latest == null ? null : latest.dueOn());
    }

    private static @Nullable String text(@Nullable Entered typed, boolean isGauge, UnitSet units) {
        if (!isGauge) {
            return typed == null ? null : typed.toString();
        }
        var format = QuantityFormat.of(units);
        return TypedText.of(typed, units.pressure(), reading -> format.difference(PressureDifference.of(reading)));
    }
}
