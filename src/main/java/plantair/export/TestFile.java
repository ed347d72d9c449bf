package plantair.export;

import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernate.Hibernate;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.RestatingCertificate;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.StoredResult;
import plantair.testrecord.StoredResults;
import plantair.testrecord.TestReview;
import plantair.testrecord.TestReviews;

/** Writes all tests as CSV (RFC 4180), a batch at a time, so that a long history takes no more room than a short one. */
@Service
public class TestFile {

    /** Name of the file, without {@code .csv}. */
    public static final String NAME = "tests";

    private static final int BATCH = 200;
    private static final int WRITERS = 2;

    private final PumpUpTests tests;
    private final StoredResults results;
    private final TestReviews reviews;
    private final ResultProjection projection;
    private final EntityManager entities;
    private final TransactionTemplate reading;

    TestFile(
            PumpUpTests tests,
            StoredResults results,
            TestReviews reviews,
            ResultProjection projection,
            EntityManager entities,
            TransactionTemplate transaction) {
        this.tests = tests;
        this.results = results;
        this.reviews = reviews;
        this.projection = projection;
        this.entities = entities;
        this.reading = new TransactionTemplate(Objects.requireNonNull(transaction.getTransactionManager()));
        this.reading.setReadOnly(true);
    }

    /**
     * Writes header and rows, one a run, in the order of test and run numbers. While batches are turned into text, the next one
     * is read.
     *
     * @throws IOException when the reader has gone away
     */
    public void write(ExportFilter filter, Appendable out) throws IOException {
        ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
        try {
            out.append(TestRows.header());
            Deque<Future<String>> texts = new ArrayDeque<>();
            Batch batch = new Batch(BATCH, 0, List.of(), Said.NOTHING);
            while (batch.size == BATCH) {
                long after = batch.last;
                batch = Objects.requireNonNull(reading.execute(status -> forgetting(batch(filter, after))));
                Batch read = batch;
                texts.add(writers.submit(() -> TestRows.of(runs(read))));
                if (texts.size() > WRITERS) {
                    out.append(finished(texts.remove()));
                }
            }
            for (Future<String> text : texts) {
                out.append(finished(text));
            }
        } finally {
            writers.shutdownNow();
        }
    }

    private static String finished(Future<String> text) throws IOException {
        try {
            return text.get();
        } catch (ExecutionException failure) {
            throw new IllegalStateException(failure.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        }
    }

    /** Inside a longer transaction nothing else would let go of what was read. */
    private Batch forgetting(Batch batch) {
        entities.clear();
        return batch;
    }

    private record Batch(int size, long last, List<PumpUpTest> wanted, Said said) {}

    private Batch batch(ExportFilter filter, long after) {
        List<PumpUpTest> found = tests.findNext(
                after, filter.siteId(), filter.compressorId(), filter.earliest(), filter.latest(), Limit.of(BATCH));
        if (found.isEmpty()) {
            return new Batch(0, after, List.of(), Said.NOTHING);
        }
        List<PumpUpTest> wanted = found.stream().filter(filter::holds).toList();
        wanted.forEach(TestFile::readWhole);
        Said said = wanted.isEmpty()
                ? Said.NOTHING
                : said(wanted.stream().map(PumpUpTest::id).toList());
        return new Batch(found.size(), found.get(found.size() - 1).id(), wanted, said);
    }

    /** All that a row takes from the test, which cannot be read later. */
    private static void readWhole(PumpUpTest test) {
        Hibernate.initialize(test.volumes());
        Hibernate.initialize(test.ratings());
        Hibernate.initialize(test.instruments());
        Hibernate.initialize(test.runs());
    }

    /** What is said of some tests elsewhere, by test id. */
    private record Said(
            Map<Long, StoredResult> results,
            Map<Long, String> certificates,
            Map<Long, Long> corrections,
            Map<Long, TestReview> reviews) {

        static final Said NOTHING = new Said(Map.of(), Map.of(), Map.of(), Map.of());
    }

    private Said said(List<Long> ids) {
        return new Said(
                results.ofTests(ids).stream().collect(Collectors.toMap(StoredResult::testId, Function.identity())),
                results.certificatesOf(ids).stream()
                        .collect(Collectors.toMap(RestatingCertificate::testId, RestatingCertificate::number)),
                tests.findBySupersedesIdIn(ids).stream()
                        .collect(Collectors.toMap(PumpUpTest::supersedesId, PumpUpTest::id)),
                reviews.findByTestIdIn(ids).stream()
                        .collect(Collectors.toMap(TestReview::testId, Function.identity())));
    }

    private List<List<TestRun>> runs(Batch batch) {
        return batch.wanted.stream().map(test -> runs(test, batch.said)).toList();
    }

    private List<TestRun> runs(PumpUpTest test, Said said) {
        StoredResult stored = said.results.get(test.id());
        PumpUpResult result = projection.result(stored);
        return IntStream.rangeClosed(1, test.runs().size())
                .mapToObj(number -> new TestRun(
                        test,
                        stored,
                        result,
                        said.certificates.get(test.id()),
                        said.corrections.get(test.id()),
                        said.reviews.get(test.id()),
                        number))
                .toList();
    }
}
