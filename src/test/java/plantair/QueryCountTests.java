package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.FileSystemResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
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

    private List<Page> pages;
    private final Map<Page, List<SentSql.Sent>> few = new LinkedHashMap<>();
    final Map<Page, List<SentSql.Sent>> many = new LinkedHashMap<>();

    @BeforeAll
    void askForEveryPage() throws IOException, SQLException {
        pages = Page.all();
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
        ask(few);
        MoreOfEverything.in(dataSource, 2);
        // the copies are in no line of the chain: whoever remembers something until it grows is to look again
        jdbc.update("update chain_end set chain_number = chain_number + 1");
        ask(many);
    }

    @AfterAll
    void wipe() {
        database.wipe();
    }

    private void ask(Map<Page, List<SentSql.Sent>> asked) {
        for (Page page : pages) {
            String address = page.address(jdbc);
            sent.take();
            var response = site.get().uri(address).exchange().getResponse();
            assertThat(response.getStatus()).as(address).isLessThan(500);
            asked.put(page, sent.take());
        }
    }

    @Test
    void knowsEveryPage() {
        var mapped = new TreeSet<String>();
        context.getBeansOfType(RequestMappingHandlerMapping.class)
                .values()
                .forEach(mapping -> mapping.getHandlerMethods().forEach((info, handler) -> {
                    var methods = info.getMethodsCondition().getMethods();
                    boolean ours = handler.getBeanType().getPackageName().startsWith("plantair")
                            && !handler.getBeanType().getPackageName().startsWith("plantair.api");
                    if (ours && methods.contains(RequestMethod.GET)) {
                        mapped.addAll(info.getPatternValues());
                    }
                }));
        mapped.removeIf(pattern -> pattern.startsWith("/sample"));

        assertThat(pages).extracting(Page::pattern).containsExactlyInAnyOrderElementsOf(mapped);
    }

    @Test
    void asksAsManyQuestionsHoweverMuchThereIs() {
        var grown = new TreeMap<String, String>();
        few.forEach((page, before) -> {
            List<SentSql.Sent> after = many.get(page);
            if (questions(before) != questions(after) && !page.grows()) {
                grown.put(page.pattern(), before.size() + " became " + after.size() + ": " + repeated(after));
            }
        });

        assertThat(grown).isEmpty();
    }

    /** How many they are but for the one that counts a list, which is sent only where the list has more than one page. */
    private static long questions(List<SentSql.Sent> statements) {
        return statements.stream()
                .filter(one -> !one.sql().startsWith("select count("))
                .count();
    }

    private static Map<String, Integer> repeated(List<SentSql.Sent> statements) {
        Map<String, Integer> times = new TreeMap<>();
        statements.forEach(
                one -> times.merge(one.sql().replaceFirst("(.{50}).* from ", "$1 … from "), 1, Integer::sum));
        times.values().removeIf(count -> count == 1);
        return times;
    }

    @Test
    void asksNoMoreThanIsStated() {
        var more = new TreeMap<String, Integer>();
        few.forEach((page, statements) -> {
            if (statements.size() > page.most()) {
                more.put(page.pattern(), statements.size());
            }
        });

        assertThat(more).isEmpty();
    }
}

/**
 * There it is looked at how the newest rows of what grows for ever, and the first instruments, are found: H2 takes an index
 * for a condition, and then reads and sorts all that it holds, where it could read another index from its end. And at whether
 * it can keep what it compiled.
 */
@OnH2
final class QueryCountOnH2Tests extends QueryCountTests {

    private static final Pattern IN_ORDER =
            Pattern.compile("\\b(change_record|pump_up_test|pump_up_result|instrument)\\b");

    /** Some rows of many, with what H2 remarks on their order; not the text of a part that the plan repeats with its remarks. */
    private static final Pattern FIRST_ROWS =
            Pattern.compile("FETCH (?:FIRST|NEXT)(?: \\S+)? ROWS? ONLY(?! \\) \")( /\\* index sorted)?");

    private static final SentSql.Sent PLANTED = new SentSql.Sent(
            "select id from change_record where kind in ('TEST', 'SITE') order by chain_number desc fetch first 5 rows only",
            List.of());

    @Autowired
    private DataSource dataSource;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private SentSql sent;

    @ParameterizedTest
    @ValueSource(strings = {"/changes", "/changes?kind=TEST", "/tests", "/supply", "/instruments"})
    void readsTheFirstInTheOrderOfAnIndex(String address) throws SQLException {
        sent.take();
        assertThat(site.get().uri(address)).hasStatusOk();
        List<SentSql.Sent> asked = sent.take(); // what is asked below is written down too
        var plans = new ArrayList<String>();
        try (Connection connection = dataSource.getConnection()) {
            assertThat(FIRST_ROWS.matcher(plan(connection, PLANTED)).results())
                    .as("it can be found")
                    .anyMatch(first -> first.group(1) == null);
            for (SentSql.Sent one : asked) {
                if (IN_ORDER.matcher(one.sql()).find() && one.sql().contains("fetch ")) {
                    plans.add(plan(connection, one));
                }
            }
        }

        assertThat(plans)
                .isNotEmpty()
                .allSatisfy(plan -> assertThat(FIRST_ROWS.matcher(plan).results())
                        .as(plan)
                        .isNotEmpty()
                        .allMatch(first -> first.group(1) != null));
    }

    /** H2 keeps a query that it has compiled, and its result until a table of it changes; none of that where it has a like. */
    @Test
    void asksNothingThatIsCompiledAnewEachTime() throws SQLException {
        var found = new TreeMap<String, String>();
        try (Connection connection = dataSource.getConnection()) {
            var session = (SessionLocal) connection.unwrap(JdbcConnection.class).getSession();
            assertThat(session.prepare("select id from site where name like 'a%'")
                            .needRecompile())
                    .as("it can be found")
                    .isTrue();
            many.forEach((page, statements) -> statements.stream()
                    .map(SentSql.Sent::sql)
                    .filter(sql -> session.prepare(sql).needRecompile())
                    .forEach(sql -> found.put(page.pattern(), sql)));
        }

        assertThat(found).isEmpty();
    }

    private static String plan(Connection connection, SentSql.Sent one) throws SQLException {
        try (PreparedStatement explain = connection.prepareStatement("explain " + one.sql())) {
            one.bind(explain);
            try (ResultSet line = explain.executeQuery()) {
                line.next();
                return line.getString(1).replaceAll("\\s+", " ");
            }
        }
    }
}

/**
 * There the plans are looked at too: what a page reads of the tables that grow for ever, it can find by an index. The tables
 * of a test are so small that reading them whole is quicker, so the planner is told not to where there is another way.
 */
@OnPostgres
final class QueryCountOnPostgresTests extends QueryCountTests {

    private static final Pattern WHOLE_TABLE = Pattern.compile(
            "Seq Scan on (pump_up_test|pump_up_result|pump_up_run|pump_up_volume|pump_up_rating|pump_up_instrument"
                    + "|test_review|baseline_choice|logged_run|logged_run_withdrawal|gauge_restatement"
                    + "|gauge_restatement_test|calibration|calibration_point|leak_test|leak_cycle|leak_machine"
                    + "|leak_reading|leak_volume|found_leak|found_leak_step|machine_readings|maintenance_event"
                    + "|valve_test|vessel_certificate|vessel_finding|vessel_inspection|wall_reading|attachment"
                    + "|attachment_content|attachment_piece|attachment_withdrawal|test_draft|account_event"
                    + "|change_record)\\b");

    /** A list is counted to its last page and no further, in any order. */
    private static final String BOUNDED_COUNT = "select count(*) from (select";

    private static final SentSql.Sent PLANTED =
            new SentSql.Sent("select id from pump_up_test where zone = 'none'", List.of());

    @Autowired
    private DataSource dataSource;

    @Test
    void readsNoLargeTableFromEndToEnd() throws SQLException {
        var found = new TreeMap<String, String>();
        try (Connection connection = dataSource.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("analyze");
            connection.setAutoCommit(false); // the pool takes back what is set for this transaction
            statement.execute("set local enable_seqscan = off");
            assertThat(whole(connection, PLANTED)).as("it can be found").hasValue("pump_up_test");
            for (var asked : many.entrySet()) {
                if (!asked.getKey().grows()) {
                    for (SentSql.Sent one : asked.getValue()) {
                        whole(connection, one)
                                .ifPresent(table -> found.put(asked.getKey().pattern() + " " + table, one.sql()));
                    }
                }
            }
        }

        assertThat(found).isEmpty();
    }

    private static Optional<String> whole(Connection connection, SentSql.Sent one) throws SQLException {
        if (!one.sql().startsWith("select") || one.sql().startsWith(BOUNDED_COUNT)) {
            return Optional.empty();
        }
        String plain = one.sql().replaceAll(" for (no key )?update.*", "");
        try (PreparedStatement explain = connection.prepareStatement("explain " + plain)) {
            one.bind(explain);
            try (ResultSet line = explain.executeQuery()) {
                while (line.next()) {
                    Matcher scan = WHOLE_TABLE.matcher(line.getString(1));
                    if (scan.find()) {
                        return Optional.of(scan.group(1));
                    }
                }
            }
        }
        return Optional.empty();
    }
}
