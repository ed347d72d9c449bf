package plantair.testrecord;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.WorkingStep;
import plantair.quantity.AbsolutePressure;
import tools.jackson.databind.json.JsonMapper;

/**
 * Keeps the results of all tests beside them, so that pages and exports need not compute. Nothing in it is a source of
 * truth: {@link #rebuild} makes it anew from the tests, to the same digits.
 */
@Service
public class ResultProjection {

    private static final int BATCH = 200;

    private final PumpUpTests tests;
    private final StoredResults results;
    private final TransactionTemplate transaction;
    private final JsonMapper json = JsonMapper.builder().build();

    ResultProjection(PumpUpTests tests, StoredResults results, TransactionTemplate transaction) {
        this.tests = tests;
        this.results = results;
        this.transaction = transaction;
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

    /** The working of a test, made by its own method from its readings. */
    public List<WorkingStep> working(PumpUpTest test) {
        return evaluate(test).working();
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
     * Computes what is missing, as after loading tests by SQL.
     *
     * @return how many results were added
     */
    public int fill() {
        List<Long> missing = results.testsWithoutResult();
        for (Long id : missing) {
            transaction.executeWithoutResult(status -> {
                PumpUpTest test = tests.findById(id).orElseThrow();
                results.save(row(test, tests.findBySupersedesId(id).isEmpty()));
            });
        }
        return missing.size();
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
        Set<Long> superseded = tests.findBySupersedesIdIn(ids).stream()
                .map(PumpUpTest::supersedesId)
                .collect(Collectors.toSet());
        results.deleteBetween(id + 1, ids.get(ids.size() - 1));
        batch.forEach(test -> results.save(row(test, !superseded.contains(test.id()))));
        return batch;
    }

    private StoredResult row(PumpUpTest test, boolean current) {
        PumpUpResult result = evaluate(test).withoutWorking();
        return new StoredResult(test, result, current, json.writeValueAsString(result));
    }

    private static PumpUpResult evaluate(PumpUpTest test) {
        return PumpUpMethods.version(test.methodVersion()).evaluate(TestReadings.of(test));
    }
}
