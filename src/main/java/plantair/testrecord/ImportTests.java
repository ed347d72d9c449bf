package plantair.testrecord;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.CompressorFollower;
import plantair.pumpup.PumpUpMethods;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.StaleRecord;

/** Takes in tests that were written down elsewhere. The caller's transaction makes it all or nothing. */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class ImportTests {

    private static final int BATCH = 200;

    private final RecordTest record;
    private final PumpUpTests tests;
    private final StoredResults results;
    private final ResultProjection projection;
    private final Changes changes;
    private final Clock clock;
    private final EntityManager entities;
    private final ObjectProvider<CompressorFollower> followers;

    ImportTests(
            RecordTest record,
            PumpUpTests tests,
            StoredResults results,
            ResultProjection projection,
            Changes changes,
            Clock clock,
            EntityManager entities,
            ObjectProvider<CompressorFollower> followers) {
        this.record = record;
        this.tests = tests;
        this.results = results;
        this.projection = projection;
        this.changes = changes;
        this.clock = clock;
        this.entities = entities;
        this.followers = followers;
    }

    /** Whether the method can make a result of a draft; false where its readings contradict each other. */
    public boolean isPossible(TestDraft draft) {
        try {
            PumpUpMethods.version(draft.methodVersion()).evaluate(TestReadings.of(draft));
            return true;
        } catch (IllegalArgumentException | ArithmeticException contradiction) {
            return false;
        }
    }

    /**
     * Records a test of a log, with a line in the change log that says where it came from.
     *
     * @param corrected the test that it corrects; null when it corrects none
     * @param reason why it corrects that one, else where it came from
     * @throws StaleRecord when that one has been corrected already
     */
    public PumpUpTest record(TestDraft draft, @Nullable PumpUpTest corrected, String reason, String source, String by) {
        if (corrected != null && tests.findBySupersedesId(corrected.id()).isPresent()) {
            throw new StaleRecord("test " + corrected.id());
        }
        var correction = corrected == null ? null : new PumpUpTest.Correction(corrected.id(), reason);
        if (corrected != null) {
            projection.supersede(corrected);
        }
        PumpUpTest test = record.add(draft, by, correction);
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.TEST,
                test.id(),
                "test " + test.id(),
                null,
                "imported from " + source + ": test of "
                        + draft.compressor().tag() + " at " + draft.performedAt() + " by " + draft.tester()
                        + (corrected == null ? "" : ", supersedes test " + corrected.id()),
                reason));
        return test;
    }

    /** Lets go of what was recorded so far, so that a long log takes no more room than a short one. */
    public void forget() {
        entities.flush();
        entities.clear();
    }

    /**
     * Computes the results of tests that came by another way than {@link #record}.
     *
     * @param progress told how many are done
     * @return the id of the first test of which the method can make no result; empty when all is well
     */
    public Optional<Long> computeResults(LongConsumer progress) {
        Set<Long> machines = new HashSet<>();
        List<Long> missing = results.testsWithoutResult();
        for (int from = 0; from < missing.size(); from += BATCH) {
            List<Long> batch = missing.subList(from, Math.min(from + BATCH, missing.size()));
            try {
                machines.addAll(projection.addMissing(batch));
            } catch (ResultProjection.ImpossibleTest impossible) {
                return Optional.of(impossible.testId());
            }
            forget();
            progress.accept(from + batch.size());
        }
        tellFollowers(machines);
        return Optional.empty();
    }

    /** Tells those who follow these machines that tests were added. */
    public void tellFollowers(Set<Long> compressorIds) {
        for (long id : compressorIds) {
            followers.orderedStream().forEach(follower -> follower.changed(id));
            forget();
        }
    }
}
