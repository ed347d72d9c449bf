package plantair.testrecord;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.CompressorFollower;
import plantair.instrument.AsFound;
import plantair.instrument.Calibration;
import plantair.instrument.Calibrations;
import plantair.instrument.InstrumentKind;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;

/**
 * What a gauge's calibration says of the tests made with it before: those since the calibration before that one. A test
 * keeps its readings; only its derived result follows a signed restatement.
 */
@Service
public class Restatements {

    private final Calibrations calibrations;
    private final GaugeRestatements signed;
    private final PumpUpTests tests;
    private final ResultProjection projection;
    private final Changes changes;
    private final Clock clock;
    private final ObjectProvider<CompressorFollower> followers;

    Restatements(
            Calibrations calibrations,
            GaugeRestatements signed,
            PumpUpTests tests,
            ResultProjection projection,
            Changes changes,
            Clock clock,
            ObjectProvider<CompressorFollower> followers) {
        this.calibrations = calibrations;
        this.signed = signed;
        this.tests = tests;
        this.projection = projection;
        this.changes = changes;
        this.clock = clock;
        this.followers = followers;
    }

    /** The tests that a calibration touches, oldest first. */
    @Transactional(readOnly = true)
    public List<PumpUpTest> touchedBy(Calibration calibration) {
        LocalDate since = calibrations
                .findCurrent(List.of(calibration.instrument().id()))
                .stream()
                .map(Calibration::doneOn)
                .filter(day -> day.isBefore(calibration.doneOn()))
                .reduce((earlier, later) -> later)
                .orElse(LocalDate.MIN);
        return tests.findWithInstrument(calibration.instrument().id()).stream()
                .filter(test -> isBetween(since, day(test), calibration.doneOn()))
                .toList();
    }

    private static boolean isBetween(LocalDate since, LocalDate day, LocalDate until) {
        return !day.isBefore(since) && day.isBefore(until);
    }

    /** What a calibration takes off the readings of the tests it touches; nothing where it is no gauge's. */
    public static List<AsFound> errors(Calibration calibration) {
        return calibration.instrument().facts().kind() == InstrumentKind.GAUGE ? calibration.points() : List.of();
    }

    /** Signs a restatement, computes the results of the tests it touches anew and tells those who follow their machines. */
    @Transactional
    public void sign(Calibration calibration, String note, String by) {
        if (!errors(calibration).isEmpty()
                && signed.findByCalibrationId(calibration.id()).isEmpty()) {
            List<PumpUpTest> touched = touchedBy(calibration);
            List<Long> ids = touched.stream().map(PumpUpTest::id).toList();
            GaugeRestatement restatement =
                    signed.saveAndFlush(new GaugeRestatement(calibration.id(), ids, clock.instant(), by, note));
            touched.forEach(projection::renew);
            touched.stream()
                    .map(test -> test.compressor().id())
                    .distinct()
                    .sorted()
                    .forEach(this::tellFollowers);
            changes.save(new ChangeRecord(
                    clock.instant(),
                    by,
                    ChangeKind.RESTATEMENT,
                    restatement.id(),
                    calibration.instrument().facts().tag(),
                    null,
                    "calibration " + calibration.id() + " restates tests " + ids,
                    note));
        }
    }

    private void tellFollowers(long compressorId) {
        followers.orderedStream().forEach(follower -> follower.changed(compressorId));
    }

    private static LocalDate day(PumpUpTest test) {
        return test.performedAt().atZone(test.zone()).toLocalDate();
    }
}
