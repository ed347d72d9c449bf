package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.sql.SQLException;
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

@OnH2
final class QueryCountOnH2Tests extends QueryCountTests {}
