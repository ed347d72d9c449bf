package plantair.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import plantair.quantity.Entered;
import plantair.register.Changes;
import plantair.register.Register;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.web.StaleRecord;

/** Which calibration counts on which day. */
abstract class CalibrationsTests {

    private static final LocalDate SPRING = LocalDate.of(2025, 3, 1);
    private static final LocalDate AUTUMN = LocalDate.of(2025, 9, 1);

    @Autowired
    private Instruments instruments;

    @Autowired
    private Register<InstrumentFacts, Instrument> register;

    @Autowired
    private Calibrations calibrations;

    @Autowired
    private RecordCalibration record;

    @Autowired
    private Changes changes;

    @Autowired
    private Database database;

    private Instrument gauge;

    @BeforeEach
    void startWithAGauge() {
        database.wipe();
        gauge = register.add(new Instrument(facts("G-1", InstrumentKind.GAUGE)), "bought", "Ann");
        register.add(new Instrument(facts("G-0", InstrumentKind.GAUGE)), "bought", "Ann");
        register.add(new Instrument(facts("T-1", InstrumentKind.TIMER)), "bought", "Ann");
    }

    @Test
    void givesTheLastCalibrationOfADay() {
        Calibration spring = record.record(draft(SPRING), "Ann");
        Calibration autumn = record.record(draft(AUTUMN), "Ann");

        assertThat(calibrations.findLatest(gauge.id(), SPRING.minusDays(1))).isEmpty();
        assertThat(latest(SPRING)).isEqualTo(spring.id());
        assertThat(latest(AUTUMN.minusDays(1))).isEqualTo(spring.id());
        assertThat(latest(AUTUMN)).isEqualTo(autumn.id());
        assertThat(calibrations.findHistory(gauge.id()))
                .extracting(Calibration::id)
                .containsExactly(autumn.id(), spring.id());
    }

    @Test
    void keepsPointsAsTypedAndInOrder() {
        record.record(draft(SPRING), "Ann");

        Calibration read = calibrations.findLatest(gauge.id(), SPRING).orElseThrow();

        assertThat(read.points()).containsExactlyElementsOf(points());
        assertThat(read.foundErrors()).isTrue();
        assertThat(read.recordedBy()).isEqualTo("Ann");
    }

    @Test
    void recordsAFormSentTwiceOnce() {
        CalibrationDraft draft = draft(SPRING);

        assertThat(record.record(draft, "Ann").id())
                .isEqualTo(record.record(draft, "Ann").id());
        assertThat(calibrations.findHistory(gauge.id())).hasSize(1);
    }

    @Test
    void countsACorrectionInPlaceOfTheCorrected() {
        Calibration wrong = record.record(draft(AUTUMN), "Ann");
        long lines = changes.count();
        Calibration right = record.supersede(wrong, draft(SPRING), "date misread", "Bo");

        assertThat(latest(AUTUMN)).isEqualTo(right.id());
        assertThat(calibrations.findCurrent(List.of(gauge.id())))
                .extracting(Calibration::id)
                .containsExactly(right.id());
        assertThat(calibrations.findHistory(gauge.id())).hasSize(2);
        assertThat(changes.count()).as("one of the new, one of the instrument").isEqualTo(lines + 2);
        assertThatThrownBy(() -> record.supersede(wrong, draft(SPRING), "again", "Bo"))
                .isInstanceOf(StaleRecord.class);
    }

    @Test
    void listsInstrumentsInServiceByKind() {
        register.revise(gauge.id(), 0, retired(gauge.facts()), "broken", "Ann");

        assertThat(instruments.findAnywhere(InstrumentKind.GAUGE, 0))
                .extracting(one -> one.facts().tag())
                .containsExactly("G-0");
    }

    private long latest(LocalDate day) {
        return calibrations.findLatest(gauge.id(), day).orElseThrow().id();
    }

    private CalibrationDraft draft(LocalDate doneOn) {
        var certificate = new Certificate(doneOn, doneOn.plusYears(1), "K-7", "Own bench", "", true, "");
        return new CalibrationDraft(UUID.randomUUID(), gauge, certificate, points());
    }

    private static List<AsFound> points() {
        return List.of(
                new AsFound(Entered.parse("175.0 [psi]"), Entered.parse("4 [psi]")),
                new AsFound(Entered.parse("100 [psi]"), Entered.parse("0 [psi]")));
    }

    private static InstrumentFacts facts(String tag, InstrumentKind kind) {
        boolean isGauge = kind == InstrumentKind.GAUGE;
        Entered span = isGauge ? Entered.parse("200 [psi]") : null;
        Entered division = isGauge ? Entered.parse("2 [psi]") : null;
        AccuracyGrade grade = isGauge ? AccuracyGrade.ASME_1A : null;
        return new InstrumentFacts(tag, kind, null, "", "", span, grade, null, null, division, 12, "", true);
    }

    private static InstrumentFacts retired(InstrumentFacts now) {
        return new InstrumentFacts(
                now.tag(),
                now.kind(),
                now.keptAt(),
                now.maker(),
                now.serialNumber(),
                now.span(),
                now.grade(),
                now.gradePercent(),
                now.accuracy(),
                now.division(),
                now.intervalMonths(),
                now.note(),
                false);
    }
}

@OnH2
final class CalibrationsOnH2Tests extends CalibrationsTests {}

@OnPostgres
final class CalibrationsOnPostgresTests extends CalibrationsTests {}
