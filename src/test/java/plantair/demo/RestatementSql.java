package plantair.demo;

import java.time.Instant;
import java.util.List;
import plantair.demo.Gauges.Calibrated;
import plantair.instrument.InstrumentFacts;

/** The restatement of the tests that were made with the gauge that read high, as SQL. */
final class RestatementSql {

    private static final Instant SIGNED = Instant.parse("2023-03-15T17:20:00Z");
    private static final String NOTE =
            "PG-03 read 5 % too much, nobody knows since when, so all tests of C-03 with it are"
                    + " restated. We took C-03 for better than it is; the dryer was chosen by that figure and is large enough.";

    private final Script script;

    RestatementSql(Script script) {
        this.script = script;
    }

    void add(List<DemoTest> tests) {
        Calibrated found = Gauges.CALIBRATIONS.stream()
                .filter(one -> !one.certificate().leftInOrder())
                .findFirst()
                .orElseThrow();
        String calibration = Script.calibrationId(found.submission());
        script.add(new Insert("gauge_restatement")
                .setSql("calibration_id", calibration)
                .set("restated_at", SIGNED)
                .set("restated_by", ChangeBook.KEEPER)
                .set("note", NOTE));
        tests.stream()
                .filter(test -> isMadeWith(found.instrument(), test))
                .forEach(test -> script.add(new Insert("gauge_restatement_test")
                        .setSql(
                                "restatement_id",
                                "(select id from gauge_restatement where calibration_id = " + calibration + ")")
                        .setSql("test_id", Script.testId(test.draft().submission()))));
    }

    private static boolean isMadeWith(InstrumentFacts gauge, DemoTest test) {
        return test.draft().instruments().stream().anyMatch(copy -> copy.tag().equals(gauge.tag()));
    }
}
