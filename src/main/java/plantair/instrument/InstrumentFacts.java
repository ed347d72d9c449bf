package plantair.instrument;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;
import plantair.register.Facts;
import plantair.site.Site;

/**
 * What the register says of an instrument.
 *
 * @param tag how the plant calls it; once only in the plant
 * @param kind what it measures
 * @param keptAt the site where it is kept; null when it is carried between sites
 * @param maker maker and model, may be empty
 * @param serialNumber may be empty
 * @param span full scale less start of scale; never null for a gauge
 * @param grade grade or class of a gauge; null for any other kind
 * @param gradePercent largest error in percent of span; given when the grade is {@link AccuracyGrade#OTHER}
 * @param accuracy largest error either way, of an instrument that is no gauge; a difference, also for temperatures
 * @param division smallest step of the scale; never null for a gauge
 * @param intervalMonths how long a calibration counts by the rule of the plant
 * @param note free text, may be empty
 * @param inService false once it is retired
 */
@Embeddable
public record InstrumentFacts(
        String tag,
        @Enumerated(EnumType.STRING) InstrumentKind kind,

        @ManyToOne(fetch = FetchType.LAZY) @JoinColumn(name = "site_id") @Nullable
        Site keptAt,

        String maker,
        String serialNumber,
        @Nullable Entered span,
        @Enumerated(EnumType.STRING) @Nullable AccuracyGrade grade,
        @Nullable Entered gradePercent,
        @Nullable Entered accuracy,
        @Nullable Entered division,
        @Nullable Integer intervalMonths,
        String note,
        boolean inService)
        implements Facts {

    @Override
    public String name() {
        return tag;
    }

    /** Largest error anywhere on a gauge's scale in percent of span, typed or from its grade; empty when it is no gauge. */
    public Optional<Entered> limitPercent() {
        return grade == null ? Optional.empty() : Optional.of(gradePercent == null ? grade.percent() : gradePercent);
    }

    /** Largest error anywhere on a gauge's scale as a part of span, 0.01 for 1 %; empty when it is no gauge. */
    public OptionalDouble limitPart() {
        return limitPercent().map(Entered::part).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("tag", tag)
                .add("kind", kind)
                .add("kept at", keptAt == null ? null : keptAt.name())
                .add("maker and model", maker)
                .add("serial number", serialNumber)
                .add("span", span)
                .add("grade", grade)
                .add("percent of span", gradePercent)
                .add("accuracy", accuracy)
                .add("division", division)
                .add("calibration interval, months", intervalMonths)
                .add("in service", inService)
                .add("note", note)
                .toString();
    }
}
