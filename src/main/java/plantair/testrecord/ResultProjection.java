package plantair.testrecord;

import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.equipment.CompressorFollower;
import plantair.instrument.AsFound;
import plantair.instrument.Calibration;
import plantair.instrument.Calibrations;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.WorkingStep;
import plantair.quantity.AbsolutePressure;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.module.blackbird.BlackbirdModule;

/**
 * Keeps the results of all tests beside them, so that pages and exports need not compute. Nothing in it is a source of
 * truth: {@link #rebuild} makes it anew from the tests, to the same digits.
 */
@Service
public class ResultProjection {

    private static final int BATCH = 200;

    private final PumpUpTests tests;
    private final StoredResults results;
    private final Calibrations calibrations;
    private final GaugeRestatements restatements;
    private final TransactionTemplate transaction;
    private final EntityManager entities;
    private final ObjectProvider<CompressorFollower> followers;
    private final JsonMapper json =
            JsonMapper.builder().addModule(new BlackbirdModule()).build();

    ResultProjection(
            PumpUpTests tests,
            StoredResults results,
            Calibrations calibrations,
            GaugeRestatements restatements,
            TransactionTemplate transaction,
            EntityManager entities,
            ObjectProvider<CompressorFollower> followers) {
        this.tests = tests;
        this.results = results;
        this.calibrations = calibrations;
        this.restatements = restatements;
        this.transaction = transaction;
        this.entities = entities;
        this.followers = followers;
    }

    /** The whole result as stored, without its working. */
    public PumpUpResult result(StoredResult stored) {
        return json.readValue(stored.detail(), PumpUpResult.class);
    }

    /** The results of these tests by test id, in one query. */
    public Map<Long, PumpUpResult> results(Collection<Long> testIds) {
        return results.ofTests(testIds).stream().collect(Collectors.toMap(StoredResult::testId, this::result));
    }

    /** The station pressure that the result of a test is based on. */
    public static AbsolutePressure stationPressure(PumpUpTest test) {
        return TestReadings.station(test.conditions()).pressure();
    }

    /** What the method takes of a test, the errors of its gauge included when they restate it. */
    public PumpUpReadings readings(PumpUpTest test) {
        return TestReadings.of(test, errors(restatement(test)));
    }

    /** The result as if its gauge had these errors; stores nothing. */
    public PumpUpResult asIf(PumpUpTest test, List<AsFound> errors) {
        return evaluate(test, errors);
    }

    /** The working of a test, made by its own method from its readings. */
    public List<WorkingStep> working(PumpUpTest test) {
        return evaluate(test, errors(restatement(test))).working();
    }

    /** Computes and stores the result of a new test. */
    void add(PumpUpTest test) {
        results.save(row(test, true));
    }

    /** Marks the result of a test as no longer current. */
    void supersede(PumpUpTest test) {
        results.findByKeyTestIdAndKeyMethodVersion(test.id(), test.methodVersion())
                .ifPresent(StoredResult::supersede);
    }

    /**
     * Computes what is missing, as after loading tests by SQL, in batches that are each one transaction, and tells those who
     * follow the machines.
     *
     * @param progress told after each batch how many are done
     * @return how many results were added
     */
    public int fill(LongConsumer progress) {
        List<Long> missing = results.testsWithoutResult();
        Set<Long> machines = new TreeSet<>();
        for (int from = 0; from < missing.size(); from += BATCH) {
            List<Long> batch = missing.subList(from, Math.min(from + BATCH, missing.size()));
            transaction.executeWithoutResult(status -> machines.addAll(addMissing(batch)));
            progress.accept(from + batch.size());
        }
        machines.forEach(id -> transaction.executeWithoutResult(
                status -> followers.orderedStream().forEach(follower -> follower.changed(id))));
        return missing.size();
    }

    /**
     * Computes and stores the results of tests that have none.
     *
     * @return their machines
     * @throws ImpossibleTest when the method can make no result of one
     */
    Set<Long> addMissing(Collection<Long> testIds) {
        List<PumpUpTest> batch = tests.findByIdInOrderById(testIds);
        Set<Long> superseded = superseded(testIds);
        Map<Long, Calibration> restated = restatements(testIds);
        for (PumpUpTest test : batch) {
            try {
                entities.persist(
                        row(test, Optional.ofNullable(restated.get(test.id())), !superseded.contains(test.id())));
            } catch (IllegalArgumentException | ArithmeticException | NullPointerException contradiction) {
                throw new ImpossibleTest(test.id(), contradiction);
            }
        }
        return batch.stream().map(test -> test.compressor().id()).collect(Collectors.toSet());
    }

    private Set<Long> superseded(Collection<Long> testIds) {
        return tests.findBySupersedesIdIn(testIds).stream()
                .map(PumpUpTest::supersedesId)
                .collect(Collectors.toSet());
    }

    /** The calibration that restates each of these tests which one does: that of the last restatement signed. */
    private Map<Long, Calibration> restatements(Collection<Long> testIds) {
        return restatements.findOf(testIds).stream()
                .collect(Collectors.toMap(
                        RestatedTest::testId,
                        one -> calibrations.findById(one.calibrationId()).orElseThrow(),
                        (earlier, later) -> later));
    }

    /**
     * Throws every result away and computes it anew, in batches that are each one transaction.
     *
     * @param progress told after each batch how many tests are done
     * @return how many tests there were
     */
    public long rebuild(LongConsumer progress) {
        long last = 0;
        long done = 0;
        while (true) {
            long after = last;
            List<PumpUpTest> batch = transaction.execute(status -> rebuildAfter(after));
            if (batch.isEmpty()) {
                return done;
            }
            last = batch.get(batch.size() - 1).id();
            done += batch.size();
            progress.accept(done);
        }
    }

    private List<PumpUpTest> rebuildAfter(long id) {
        List<PumpUpTest> batch = tests.findByIdGreaterThanOrderById(id, Limit.of(BATCH));
        if (batch.isEmpty()) {
            results.deleteBetween(id + 1, Long.MAX_VALUE);
            return batch;
        }
        List<Long> ids = batch.stream().map(PumpUpTest::id).toList();
        results.deleteBetween(id + 1, ids.get(ids.size() - 1));
        addMissing(ids);
        return batch;
    }

    /** A test of which the method can make no result. */
    static final class ImpossibleTest extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final long testId;

        ImpossibleTest(long testId, RuntimeException cause) {
            super("test " + testId, cause);
            this.testId = testId;
        }

        long testId() {
            return testId;
        }
    }

    /** Computes a result anew, as after its gauge was found wrong. */
    void renew(PumpUpTest test) {
        results.save(row(test, tests.findBySupersedesId(test.id()).isEmpty()));
    }

    private StoredResult row(PumpUpTest test, boolean current) {
        return row(test, restatement(test), current);
    }

    private StoredResult row(PumpUpTest test, Optional<Calibration> restatement, boolean current) {
        PumpUpResult result = evaluate(test, errors(restatement)).withoutWorking();
        var restated = restatement
                .map(calibration -> new StoredResult.Restated(
                        calibration.id(), evaluate(test, List.of()).freeAir()))
                .orElse(null);
        return new StoredResult(test, result, restated, current, json.writeValueAsString(result));
    }

    private Optional<Calibration> restatement(PumpUpTest test) {
        return restatements.findLatestOf(test.id()).flatMap(signed -> calibrations.findById(signed.calibrationId()));
    }

    private static List<AsFound> errors(Optional<Calibration> restatement) {
        return restatement.map(Calibration::points).orElse(List.of());
    }

    private static PumpUpResult evaluate(PumpUpTest test, List<AsFound> errors) {
        return PumpUpMethods.version(test.methodVersion()).evaluate(TestReadings.of(test, errors));
    }
}
