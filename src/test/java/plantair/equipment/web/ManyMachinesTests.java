package plantair.equipment.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.site.Site;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** A group with more machines than a list shows at once: every place where one is chosen turns pages and finds a tag. */
abstract class ManyMachinesTests {

    private static final int MANY = 120;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester browser;

    private final List<Compressor> machines = new ArrayList<>();
    private Site north;
    private Site south;

    @BeforeEach
    void aGroup() {
        database.wipe();
        Plant plant = Plant.in(context);
        north = plant.site("North", "Europe/Berlin");
        south = plant.site("South", "Europe/Berlin");
        for (int i = 1; i <= MANY; i++) {
            machines.add(plant.compressor(north, String.format(Locale.ROOT, "N-%03d", i)));
        }
        machines.add(plant.compressor(south, "S_Ä%1"));
        plant.compressor(south, "S-OLD", false);
    }

    private Document page(String path) {
        var answer = SentForm.get(browser, path);
        assertThat(answer.status()).as(path).isEqualTo(200);
        assertThat(answer.page().text()).doesNotContain("??");
        return answer.page();
    }

    private List<String> chosen(String path, String of) {
        return page(path).select(of).eachText();
    }

    @Test
    void choosesTheMachineOfANewTest() {
        String names = "main ul > li > a";

        assertThat(chosen("/tests/new", names)).hasSize(50).startsWith("N-001, North");
        assertThat(chosen("/tests/new?page=3", names)).hasSize(21).endsWith("S_Ä%1, South");
        assertThat(page("/tests/new?find=n-1").select("[rel=next]").isEmpty()).isTrue();
        assertThat(chosen("/tests/new?find=n-1", names)).hasSize(21).contains("N-100, North", "N-120, North");
        assertThat(page("/tests/new?find=N-").select("[rel=next]").attr("href")).isEqualTo("/tests/new?find=N-&page=2");
        assertThat(page("/tests/new?find=nowhere").text()).contains("Nothing in service has that in its tag.");
        assertThat(page("/tests/new?find=nowhere").select("#find").val()).isEqualTo("nowhere");
        assertThat(SentForm.get(browser, "/tests/new?page=4").status()).isEqualTo(404);
    }

    /** What is typed is meant as it is typed, signs of a pattern too; a machine out of service is not tested. */
    @Test
    void findsATagAsItIsWritten() {
        String names = "main ul > li > a";

        assertThat(chosen("/tests/new?find=S_", names)).containsExactly("S_Ä%1, South");
        assertThat(chosen("/tests/new?find=N_", names)).isEmpty();
        assertThat(chosen("/tests/new?find=%", names)).containsExactly("S_Ä%1, South");
        assertThat(chosen("/tests/new?find=Ä", names)).containsExactly("S_Ä%1, South");
        assertThat(chosen("/tests/new?find=!", names)).isEmpty();
        assertThat(chosen("/tests/new?find=OLD", names)).isEmpty();
    }

    @Test
    void choosesTheMachineOfAGuidedTest() {
        String names = "#machines > li > a";

        assertThat(chosen("/guided", names)).hasSize(50);
        assertThat(page("/guided").select("#machines").attr("data-part")).isEqualTo("true");
        assertThat(chosen("/guided?find=-12", names)).containsExactly("N-120, North");
        assertThat(page("/guided?find=-12").select("#machines").attr("data-part"))
                .isEqualTo("false");
        assertThat(SentForm.get(browser, "/guided?tag=n-120").redirect())
                .isEqualTo("/guided/" + machines.get(119).id());
        assertThat(page("/guided?tag=n-12").text()).contains("No machine in service has the tag “n-12”");
    }

    /** Retired ones too: somebody looks for the history of a gauge. */
    @Test
    void findsAReceiverAPipeOrAnInstrumentByItsTag() {
        Plant plant = Plant.in(context);
        plant.receiver(north);
        PlantForms.PIPE.with("tag", "P_7").post(browser);
        plant.gauge("G_9%", north, false);
        for (int i = 100; i < 160; i++) {
            plant.gauge("G-" + i);
        }
        String tags = "main tbody th";

        assertThat(chosen("/instruments", tags)).hasSize(50).startsWith("G-100");
        assertThat(chosen("/instruments?find=g-15", tags)).hasSize(10);
        assertThat(chosen("/instruments?find=_9%", tags)).containsExactly("G_9%");
        assertThat(page("/instruments?find=G&page=2").select("[rel=prev]").attr("href"))
                .isEqualTo("/instruments?find=G&page=1");
        assertThat(chosen("/receivers?find=r-1", tags)).containsExactly("R-1");
        assertThat(page("/receivers?find=r_1").text()).contains("No tag has that in it.");
        assertThat(chosen("/pipes?find=p_", tags)).containsExactly("P_7");
        assertThat(page("/pipes?find=nowhere").select("#find").val()).isEqualTo("nowhere");
    }

    @Test
    void findsAMachineOnTheOverview() {
        String tags = "#machines tbody th a";

        assertThat(chosen("/?tag=n-11", tags)).hasSize(10);
        assertThat(chosen("/?tag=old", tags)).isEmpty();
        assertThat(chosen("/?tag=old&show=ALL", tags)).containsExactly("S-OLD");
        assertThat(chosen("/?tag=N&site=" + south.id(), tags)).isEmpty();
        assertThat(page("/?tag=N-0").select("[rel=next]").attr("href"))
                .isEqualTo("/?tag=N-0&site=&standing=&show=IN_SERVICE&page=2");
        assertThat(page("/?tag=N-0&page=2").select("#tag").val()).isEqualTo("N-0");
    }

    @Test
    void choosesTheMachinesOfASiteToExport() {
        String options = "#compressor option[value~=.]";
        Compressor last = machines.get(119);

        assertThat(chosen("/export", options)).hasSize(50);
        assertThat(page("/export").text()).contains("Only the first of many are listed.");
        assertThat(chosen("/export?site=" + south.id(), options)).containsExactly("South – S_Ä%1", "South – S-OLD");
        assertThat(page("/export?site=" + south.id()).text()).doesNotContain("Only the first of many are listed.");
        assertThat(chosen("/export?compressor=" + last.id(), options)).hasSize(50);
        assertThat(chosen("/export?compressor=" + last.id(), "#compressor option[selected]"))
                .containsExactly("North – N-120");
        assertThat(chosen("/export?site=x&compressor=99999", options)).hasSize(50);
    }
}

@OnH2
final class ManyMachinesOnH2Tests extends ManyMachinesTests {}

@OnPostgres
final class ManyMachinesOnPostgresTests extends ManyMachinesTests {}
