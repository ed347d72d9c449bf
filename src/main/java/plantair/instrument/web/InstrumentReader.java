package plantair.instrument.web;

import java.util.Optional;
import plantair.instrument.AccuracyGrade;
import plantair.instrument.InstrumentFacts;
import plantair.instrument.InstrumentKind;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.EnteredField;

/**
 * Reads the form of an instrument.
 *
 * @param sent the form
 * @param kind what it measures
 * @param sites where it can be kept
 */
record InstrumentReader(Submission sent, InstrumentKind kind, Sites sites) {

    private static final double LEAST_SPAN_KPA = 60;
    private static final double MOST_SPAN_KPA = 40_000;
    private static final double MOST_PERCENT = 25;

    /** The facts; empty when something is wrong with what was typed. */
    Optional<InstrumentFacts> read(InstrumentForm form) {
        var checks = sent.checks();
        boolean isGauge = kind == InstrumentKind.GAUGE;
        var tag = checks.text("tag", form.getTag(), 40, true);
        var site = site(form.getSite());
        var maker = checks.text("maker", form.getMaker(), 120, false);
        var serial = checks.text("serialNumber", form.getSerialNumber(), 80, false);
        var span = KindUnits.hasSpan(kind) ? reading("span", form.getSpan(), isGauge) : Optional.<Entered>empty();
        var grade = isGauge
                ? checks.choice("grade", form.getGrade(), AccuracyGrade.class)
                : Optional.<AccuracyGrade>empty();
        var percent = grade.isPresent() ? percent(form.getGradePercent(), grade.get()) : Optional.<Entered>empty();
        var accuracy = isGauge ? Optional.<Entered>empty() : reading("accuracy", form.getAccuracy(), false);
        var division = reading("division", form.getDivision(), isGauge);
        if (isGauge && span.isPresent() && division.isPresent()) {
            compare(span.get(), division.get());
        }
        var months = checks.whole("intervalMonths", form.getIntervalMonths(), 1, 120, false);
        var note = checks.text("note", form.getNote(), 4_000, false);
        if (tag.isEmpty() || (isGauge && (span.isEmpty() || grade.isEmpty() || division.isEmpty()))) {
            return Optional.empty();
        }
        return Optional.of(new InstrumentFacts(
                tag.get(),
                kind,
                site.orElse(null),
                maker.orElse(""),
                serial.orElse(""),
                span.orElse(null),
                grade.orElse(null),
                percent.orElse(null),
                accuracy.orElse(null),
                division.orElse(null),
                months.orElse(null),
                note.orElse(""),
                Boolean.parseBoolean(form.getInService())));
    }

    private Optional<Site> site(String typed) {
        Optional<Long> id = sent.checks().id("site", typed, false);
        Optional<Site> site = id.flatMap(sites::findById);
        if (id.isPresent() && site.isEmpty()) {
            sent.reject("site", "instrument.site.unknown");
        }
        return site;
    }

    private Optional<Entered> reading(String path, EnteredField field, boolean required) {
        var typed = required
                ? sent.checks().required(path, field, kind.unit())
                : sent.checks().optional(path, field, kind.unit());
        return sent.checks().positive(path, typed);
    }

    private Optional<Entered> percent(EnteredField field, AccuracyGrade grade) {
        var checks = sent.checks();
        if (grade != AccuracyGrade.OTHER) {
            if (!field.isBlank()) {
                sent.reject("gradePercent.number", "instrument.gradePercent.unused");
            }
            return Optional.empty();
        }
        var percent = checks.positive("gradePercent", checks.required("gradePercent", field, FixedUnit.PERCENT));
        if (percent.isPresent() && percent.get().value() > MOST_PERCENT) {
            sent.reject("gradePercent.number", "instrument.gradePercent.large");
        }
        return percent;
    }

    private void compare(Entered span, Entered division) {
        double kilopascals = PressureDifference.of(span).in(PressureUnit.KPA);
        if (PressureDifference.of(division).in(PressureUnit.KPA) >= kilopascals) {
            sent.reject("division.number", "instrument.division.large");
        }
        if (kilopascals < LEAST_SPAN_KPA || kilopascals > MOST_SPAN_KPA) {
            sent.warnings().add("span", "instrument.span.unusual", span.toString());
        }
    }
}
