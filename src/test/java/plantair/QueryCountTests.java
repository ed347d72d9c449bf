package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.FileSystemResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import plantair.history.MachineStates;
import plantair.register.ChainIntake;
import plantair.register.ChangeKind;
import plantair.testing.Database;
import plantair.testing.MoreOfEverything;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentSql;
import plantair.testrecord.ResultProjection;

/** However many records there are, a page asks as many questions of the database. Every page is asked for. */
@Import(SentSql.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class QueryCountTests {

    @Autowired
    private Database database;

    @Autowired
    private DataSource dataSource;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private SentSql sent;

    private final Map<String, Integer> few = new TreeMap<>();
    private final Map<String, Integer> many = new TreeMap<>();

    @BeforeAll
    void askForEveryPage() throws Exception {
        database.wipe();
        new ResourceDatabasePopulator(
                        false,
                        false,
                        "UTF-8",
                        new FileSystemResource("db/demo/R__demo_plant.sql"),
                        new ClassPathResource("queries/more.sql"))
                .execute(dataSource);
        context.getBean(ResultProjection.class).fill(done -> {});
        database.recordPeople();
        long t0 = System.nanoTime();
        count(few);
        long t1 = System.nanoTime();
        MoreOfEverything.in(dataSource, 2);
        long t2 = System.nanoTime();
        count(many);
        long t3 = System.nanoTime();
        System.out.println("TIMES " + (t1 - t0) / 1e9 + " " + (t2 - t1) / 1e9 + " " + (t3 - t2) / 1e9);
        System.out.println(MoreOfEverything.rows(dataSource));
        few.forEach((p, n) -> System.out.println("COUNT " + p + " " + n + " " + many.get(p) + (n.equals(many.get(p)) ? "" : " DIFFERS")));
    }

    private void count(Map<String, Integer> counts) throws IOException {
        for (Page page : Page.all()) {
            String address = page.address(jdbc);
            sent.take();
            long t = System.nanoTime();
            var response = site.get().uri(address).exchange().getResponse();
            long ms = (System.nanoTime() - t) / 1000000;
            if (response.getStatus() != 200 || ms > 700) System.out.println("STATUS " + address + " " + response.getStatus() + " " + response.getRedirectedUrl() + " ms " + ms);
            var all = sent.take();
            counts.put(page.pattern(), all.size());
            if (counts == many && all.size() != few.get(page.pattern())) {
                Map<String, Integer> by = new TreeMap<>();
                all.forEach(one -> by.merge(one.sql(), 1, Integer::sum));
                by.forEach((sql, n) -> { if (n > 1) System.out.println("REPEATED " + page.pattern() + " " + n + " x " + sql.replaceFirst("^select (.{60}).* from ", "select $1 ... from ")); });
            }
        }
    }

    @Test
    void x() {}
}

@OnH2
final class QueryCountOnH2Tests extends QueryCountTests {}

@OnPostgres
final class QueryCountOnPostgresTests extends QueryCountTests {}
