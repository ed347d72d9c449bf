package plantair.testrecord;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressors;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Records that a second person looked at a test. */
@Service
public class ReviewTest {

    private static final Pattern USERNAME = Pattern.compile(" \\([^()]*\\)$");

    private final PumpUpTests tests;
    private final TestReviews reviews;
    private final Compressors compressors;
    private final Changes changes;
    private final Clock clock;

    ReviewTest(PumpUpTests tests, TestReviews reviews, Compressors compressors, Changes changes, Clock clock) {
        this.tests = tests;
        this.reviews = reviews;
        this.compressors = compressors;
        this.changes = changes;
        this.clock = clock;
    }

    /** Who may not review a test, and why. */
    public enum Refusal {
        /** Made the runs. */
        TESTER,
        /** Typed them in. */
        RECORDER
    }

    /**
     * Why a person may not review a test: one's own work is not reviewed. Names differ by more than capitals and blanks,
     * with and without the user name in brackets; who was called otherwise when recording has the same user name.
     */
    public static Optional<Refusal> refusal(PumpUpTest test, String by) {
        if (isSame(test.tester(), by)) {
            return Optional.of(Refusal.TESTER);
        }
        boolean isRecorder = isSame(test.recordedBy(), by)
                || username(by).filter(name -> test.recordedBy().endsWith(name)).isPresent();
        return isRecorder ? Optional.of(Refusal.RECORDER) : Optional.empty();
    }

    private static boolean isSame(String one, String other) {
        return names(one).anyMatch(name -> names(other).anyMatch(name::equals));
    }

    /** As it stands, and without what it has in brackets at its end. */
    private static Stream<String> names(String name) {
        String plain = name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        return Stream.of(plain, USERNAME.matcher(plain).replaceFirst(""));
    }

    private static Optional<String> username(String name) {
        return USERNAME.matcher(name).results().map(MatchResult::group).findFirst();
    }

    /**
     * Records a review; a test that has one keeps it.
     *
     * @param note what was looked at; may be empty
     * @throws IllegalArgumentException when it is the person's own test
     * @throws StaleRecord when a correction took its place meanwhile
     */
    @Transactional
    public TestReview review(long testId, UUID submission, String note, String by) {
        PumpUpTest test = tests.findById(testId).orElseThrow(() -> new NoSuchRecord("test " + testId));
        compressors.findLockedById(test.compressor().id()); // so that nobody corrects the test meanwhile
        if (refusal(test, by).isPresent()) {
            throw new IllegalArgumentException(by + " reviews their own test " + testId);
        }
        if (tests.findBySupersedesId(testId).isPresent()) {
            throw new StaleRecord("test " + testId);
        }
        return reviews.findByTestId(testId).orElseGet(() -> save(test, submission, note, by));
    }

    private TestReview save(PumpUpTest test, UUID submission, String note, String by) {
        TestReview review = reviews.saveAndFlush(new TestReview(submission, test.id(), clock.instant(), by, note));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.REVIEW,
                review.id(),
                "test " + test.id(),
                null,
                "test " + test.id() + " reviewed and locked",
                note.isEmpty() ? "test reviewed" : note));
        return review;
    }
}
