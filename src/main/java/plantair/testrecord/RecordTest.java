package plantair.testrecord;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.CompressorFollower;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.LearnedFactor;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.PumpUpResult;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.StaleRecord;

/** Records a test, or a correction of one, with its result: all of it or nothing. Tells those who follow the machine. */
@Service
public class RecordTest {

    private static final int TESTS_BACK = 20;

    private final PumpUpTests tests;
    private final TestReviews reviews;
    private final ResultProjection projection;
    private final Changes changes;
    private final Clock clock;
    private final ObjectProvider<CompressorFollower> followers;

    RecordTest(
            PumpUpTests tests,
            TestReviews reviews,
            ResultProjection projection,
            Changes changes,
            Clock clock,
            ObjectProvider<CompressorFollower> followers) {
        this.tests = tests;
        this.reviews = reviews;
        this.projection = projection;
        this.changes = changes;
        this.clock = clock;
        this.followers = followers;
    }

    /** Records a test; the same submission a second time gives the test of the first. */
    @Transactional
    public PumpUpTest record(TestDraft draft, String by) {
        return tests.findBySubmission(draft.submission()).orElseGet(() -> save(draft, by, null));
    }

    /**
     * Records a correction. The old test stays as it is; one that was reviewed is locked, and the reason has to say why it
     * is corrected all the same.
     *
     * @throws IllegalArgumentException when it was reviewed and the reason does not say so
     * @throws StaleRecord when another correction came first
     */
    @Transactional
    public PumpUpTest supersede(PumpUpTest old, TestDraft draft, CorrectionReason reason, String by) {
        var again = tests.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        tests.findBySupersedesId(old.id()).ifPresent(later -> {
            throw new StaleRecord("test " + old.id(), later(later));
        });
        if (reason.thoughReviewed() == null && reviews.findByTestId(old.id()).isPresent()) {
            throw new IllegalArgumentException("test " + old.id() + " is locked");
        }
        projection.supersede(old);
        PumpUpTest test = save(draft, by, new PumpUpTest.Correction(old.id(), reason.text()));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.TEST,
                old.id(),
                "test " + old.id(),
                "test " + old.id(),
                "superseded by test " + test.id(),
                reason.text()));
        return test;
    }

    /** The result that a draft would have if it were recorded now. */
    @Transactional(readOnly = true)
    public PumpUpResult preview(TestDraft draft) {
        LearnedCopy learned = learned(draft).map(LearnedCopy::of).orElse(null);
        var test = new PumpUpTest(draft, learned, clock.instant(), draft.tester(), null);
        return PumpUpMethods.version(draft.methodVersion()).evaluate(TestReadings.of(test));
    }

    private static StaleRecord.Later later(PumpUpTest test) {
        return new StaleRecord.Later(
                "/tests/" + test.id(), test.recordedBy(), test.recordedAt(), String.valueOf(test.reason()));
    }

    private PumpUpTest save(TestDraft draft, String by, PumpUpTest.@Nullable Correction correction) {
        PumpUpTest test = add(draft, by, correction);
        followers
                .orderedStream()
                .forEach(follower -> follower.changed(test.compressor().id()));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.TEST,
                test.id(),
                "test " + test.id(),
                null,
                "test of " + draft.compressor().tag() + " at " + draft.performedAt() + " by " + draft.tester(),
                correction == null ? "test recorded" : correction.reason()));
        return test;
    }

    /** Records a test with its result and tells nobody. */
    PumpUpTest add(TestDraft draft, String by, PumpUpTest.@Nullable Correction correction) {
        LearnedCopy learned = learned(draft).map(LearnedCopy::of).orElse(null);
        PumpUpTest test = tests.saveAndFlush(new PumpUpTest(draft, learned, clock.instant(), by, correction));
        projection.add(test);
        return test;
    }

    private Optional<LearnedFactor> learned(TestDraft draft) {
        if (draft.conditions().airTemperature() != AirTemperature.NOT_MEASURED) {
            return Optional.empty();
        }
        List<PumpUpReadings> settled =
                tests.findSettled(draft.compressor().id(), draft.performedAt(), Limit.of(TESTS_BACK)).stream()
                        .map(TestReadings::of)
                        .toList();
        return LearnedFactor.of(settled, TestReadings.of(draft));
    }
}
