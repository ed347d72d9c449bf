package plantair.demo;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Predicate;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.FileSystemResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import plantair.demo.Occasion.Trouble;
import plantair.testing.Database;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.StoredResult;
import plantair.testrecord.StoredResults;

/** The demo plant in the database of the running test, loaded once a class, and its truth. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class LoadedDemoPlant {

    static final List<DemoTest> TRUTH = DemoPlant.tests();

    @Autowired
    private Database database;

    @Autowired
    private DataSource dataSource;

    @Autowired
    JdbcTemplate jdbc;

    @Autowired
    ResultProjection projection;

    @Autowired
    StoredResults results;

    @Autowired
    PumpUpTests tests;

    @BeforeAll
    void load() {
        database.wipe();
        new ResourceDatabasePopulator(false, false, "UTF-8", new FileSystemResource(DemoPlantSql.FILE))
                .execute(dataSource);
        projection.fill(done -> {});
    }

    @AfterAll
    void wipe() {
        database.wipe();
    }

    StoredResult only(Trouble trouble) {
        return result(truth(trouble));
    }

    static DemoTest truth(Trouble trouble) {
        return TRUTH.stream()
                .filter(test -> test.trouble() == trouble)
                .findFirst()
                .orElseThrow();
    }

    StoredResult result(DemoTest test) {
        return resultOf(
                tests.findBySubmission(test.draft().submission()).orElseThrow().id());
    }

    StoredResult resultOf(long testId) {
        return results.findByKeyTestIdAndKeyMethodVersion(testId, "PU-1").orElseThrow();
    }

    /** Current averaged results of a compressor on some days. */
    List<StoredResult> current(String tag, Predicate<LocalDate> days) {
        Long id = jdbc.queryForObject("select id from compressor where tag = ?", Long.class, tag);
        return results.currentLinesOf(id).stream()
                .map(line -> resultOf(line.testId()))
                .filter(result -> result.comparable().isPresent() && days.test(day(result)))
                .toList();
    }

    double mean(String tag, Predicate<LocalDate> days) {
        return current(tag, days).stream()
                .mapToDouble(LoadedDemoPlant::flow)
                .average()
                .orElseThrow();
    }

    static double flow(StoredResult result) {
        return result.comparable().orElseThrow().cubicMetresPerSecond();
    }

    static LocalDate day(StoredResult result) {
        return result.performedAt().atZone(ZoneOffset.UTC).toLocalDate();
    }
}
