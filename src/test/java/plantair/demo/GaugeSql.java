package plantair.demo;

import java.time.ZoneOffset;
import java.util.Objects;
import java.util.UUID;
import plantair.demo.Gauges.Calibrated;
import plantair.instrument.AsFound;
import plantair.instrument.InstrumentFacts;

/** The gauges and their certificates as SQL. */
final class GaugeSql {

    private static final int EVENING = 22;

    private final Script script;

    GaugeSql(Script script) {
        this.script = script;
    }

    void add() {
        Gauges.ALL.forEach(facts -> gauge(facts, Gauges.version(facts)));
        Gauges.CALIBRATIONS.forEach(this::calibration);
    }

    void gauge(InstrumentFacts facts, int version) {
        String site = Objects.requireNonNull(facts.keptAt()).name();
        script.add(new Insert("instrument")
                .set("tag", facts.tag())
                .set("kind", facts.kind())
                .set("site_id", script.idOf("site", site))
                .set("maker", facts.maker())
                .set("serial_number", facts.serialNumber())
                .set("span", facts.span())
                .set("grade", facts.grade())
                .set("division", facts.division())
                .set("interval_months", facts.intervalMonths())
                .set("note", facts.note())
                .set("in_service", facts.inService())
                .set("version", version));
    }

    private void calibration(Calibrated one) {
        var certificate = one.certificate();
        script.add(new Insert("calibration")
                .set("submission", one.submission())
                .setSql(
                        "instrument_id",
                        Script.id("instrument", one.instrument().tag()))
                .set("done_on", certificate.doneOn())
                .set("due_on", certificate.dueOn())
                .set("certificate_number", certificate.certificateNumber())
                .set("laboratory", certificate.laboratory())
                .set("traceability", certificate.traceability())
                .set("left_in_order", certificate.leftInOrder())
                .set("note", certificate.note())
                .set("recorded_at", certificate.doneOn().atTime(EVENING, 0).toInstant(ZoneOffset.UTC))
                .set("recorded_by", ChangeBook.KEEPER));
        for (int i = 0; i < one.points().size(); i++) {
            point(one.submission(), i, one.points().get(i));
        }
    }

    private void point(UUID submission, int position, AsFound point) {
        script.add(new Insert("calibration_point")
                .setSql("calibration_id", Script.calibrationId(submission))
                .set("position", position)
                .set("reading", point.reading())
                .set("error", point.error()));
    }
}
