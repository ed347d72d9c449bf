package plantair.export;

import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.util.ArrayList;
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
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
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

    private static final int BATCH = 100;
    private static final CSVFormat ROWS = CSVFormat.RFC4180;
    private static final CSVFormat HEADER = ROWS.builder()
            .setHeader(TestColumns.ALL.stream().map(TestColumn::header).toArray(String[]::new))
            .get();

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
     * Writes header and rows, one a run, in the order of test and run numbers. While a batch is turned into text, the next one
     * is read.
     *
     * @throws IOException when the reader has gone away
     */
    public void write(ExportFilter filter, Appendable out) throws IOException {
        ExecutorService writer = Executors.newSingleThreadExecutor();
        try {
            Future<String> text = writer.submit(() -> text(List.of(), HEADER));
            Batch batch = new Batch(BATCH, 0, List.of());
            while (batch.size == BATCH) {
                long after = batch.last;
                batch = Objects.requireNonNull(reading.execute(status -> forgetting(batch(filter, after))));
                List<List<TestRun>> next = batch.tests;
                out.append(finished(text));
                text = writer.submit(() -> text(next, ROWS));
            }
            out.append(finished(text));
        } finally {
            writer.shutdownNow();
        }
    }

    private static String text(List<List<TestRun>> tests, CSVFormat format) throws IOException {
        var text = new StringBuilder();
        CSVPrinter printer = new CSVPrinter(text, format);
        for (List<TestRun> runs : tests) {
            printer.printRecords(rows(runs));
        }
        return text.toString();
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

    private record Batch(int size, long last, List<List<TestRun>> tests) {}

    private Batch batch(ExportFilter filter, long after) {
        List<PumpUpTest> found = tests.findNext(
                after, filter.siteId(), filter.compressorId(), filter.earliest(), filter.latest(), Limit.of(BATCH));
        if (found.isEmpty()) {
            return new Batch(0, after, List.of());
        }
        Said said = said(found.stream().map(PumpUpTest::id).toList());
        List<List<TestRun>> runs = found.stream()
                .filter(filter::holds)
                .map(test -> runs(test, said))
                .toList();
        return new Batch(found.size(), found.get(found.size() - 1).id(), runs);
    }

    /** What is said of some tests elsewhere, by test id. */
    private record Said(
            Map<Long, StoredResult> results,
            Map<Long, String> certificates,
            Map<Long, Long> corrections,
            Map<Long, TestReview> reviews) {}

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

    /** With all that a row takes from the test, which cannot be read later. */
    private List<TestRun> runs(PumpUpTest test, Said said) {
        Hibernate.initialize(test.volumes());
        Hibernate.initialize(test.ratings());
        Hibernate.initialize(test.instruments());
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

    /** What is the same in every run of a test is asked once. */
    private static Iterable<List<String>> rows(List<TestRun> runs) {
        TestRun test = runs.get(0).ofNoRun();
        List<String> ofTest = TestColumns.ALL.stream()
                .map(column -> column.isOfRun() ? "" : column.value().apply(test))
                .toList();
        return runs.stream().map(run -> row(run, ofTest)).toList();
    }

    private static List<String> row(TestRun run, List<String> ofTest) {
        List<String> row = new ArrayList<>(ofTest);
        for (int column = 0; column < row.size(); column++) {
            if (TestColumns.ALL.get(column).isOfRun()) {
                row.set(column, TestColumns.ALL.get(column).value().apply(run));
            }
        }
        return row;
    }
}
