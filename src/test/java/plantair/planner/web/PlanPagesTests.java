package plantair.planner.web;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.Cookie;
import java.io.UnsupportedEncodingException;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MockMvcTester.MockMvcRequestBuilder;
import plantair.equipment.Compressor;
import plantair.equipment.Receiver;
import plantair.site.Site;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;

abstract class PlanPagesTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester browser;

    private Plant plant;
    private Site site;
    private Compressor machine;
    private Receiver receiver;

    @BeforeEach
    void machineWithReceiver() {
        database.wipe();
        plant = Plant.in(context);
        site = plant.site();
        machine = plant.compressor(site);
        receiver = plant.receiver(site);
    }

    @Test
    void plansAtOnceFromTheRegister() {
        Document page = page(ask(), 200);

        assertThat(page.getElementById("stop.number").val()).isEqualTo("175");
        assertThat(page.getElementById("flow.number").val()).isEqualTo("35");
        assertThat(page.select("input[name=receivers][checked]")).hasSize(1);
        assertThat(page.select("#plan tbody tr")).hasSize(9);
        assertThat(page.select("#plan small").text()).contains("recommended");
        assertThat(page.select("dd").text()).contains("stop at 175.0 psig").contains("from test to test");
        assertThat(page.select("#gain tbody tr")).hasSize(4);
        assertThat(page.text()).doesNotContain("??");
    }

    @Test
    void expectsTheFlowOfTheLastTestAndItsBand() {
        plant.plan(machine).airNotMeasured().record();
        Document page = page(ask(), 200);

        assertThat(page.getElementById("stop.number").val()).isEqualTo("172.0");
        assertThat(Double.parseDouble(page.getElementById("flow.number").val())).isBetween(25.0, 34.0);
    }

    @Test
    void asksForWhatTheRegisterDoesNotKnowWithoutComplaint() {
        Site other = plant.site("South works", "America/Chicago");
        Document page = page(
                browser.get()
                        .uri(
                                "/compressors/{id}/plan",
                                plant.compressor(other, "S-1").id()),
                200);

        assertThat(page.select("#plan")).isEmpty();
        assertThat(page.select(".error, .errors")).isEmpty();
    }

    /** 227 L to 10 bar at 400 L/min: the class 2.5 gauge alone takes 9.5 % of the band from 8 bar (TestPlanTests). */
    @Test
    void answersInTheUnitsOfThePerson() {
        Document page = page(full(ask(), "").cookie(new Cookie("units", "BAR_LITRE")), 200);
        var row = page.select("#plan tbody tr").get(8);

        assertThat(page.select("#plan tbody tr")).hasSize(10);
        assertThat(row.select("th span").text()).isEqualTo("8.00 bar(g)");
        assertThat(page.select("#gain tbody").text()).contains("A gauge of 1.6 %");
    }

    @ParameterizedTest
    @CsvSource({
        "flow.number, '', flow.number",
        "flow.number, -3, flow.number",
        "flow.number, 999999999999, flow.number",
        "flow.unit, bar, flow.unit",
        "stop.number, 'ten', stop.number",
        "stop.number, 0, stop.number",
        "stop.number, 15, stop.number",
        "stop.number, 1000, stop.number",
        "span.number, '', span.number",
        "division.number, 0, division.number",
        "limit.number, 21, limit.number",
        "limit.unit, bar, limit.unit",
        "receivers, 99999, receivers",
        "receivers, x, receivers",
        "pipes, 7, pipes"
    })
    void saysBesideTheFieldWhatIsWrong(String parameter, String value, String path) {
        Document page = page(full(ask(), parameter).param(parameter, value), 422);

        String id = path.replaceAll("[.](number|unit)$", "");
        assertThat(page.select("#" + id + "-error span").text()).isNotBlank();
        assertThat(page.select(".errors li")).isNotEmpty();
        assertThat(page.select("#plan")).isEmpty();
        assertThat(page.text()).doesNotContain("??");
    }

    @Test
    void knowsNoOtherMachine() {
        assertThat(browser.get().uri("/compressors/{id}/plan", 99999)).hasStatus(404);
    }

    private MockMvcRequestBuilder ask() {
        return browser.get().uri("/compressors/{id}/plan", machine.id());
    }

    /** Everything that a plan needs, but for one parameter. */
    private MockMvcRequestBuilder full(MockMvcRequestBuilder request, String but) {
        String[][] all = {
            {"receivers", String.valueOf(receiver.id())},
            {"flow.number", "400"},
            {"flow.unit", "L/min"},
            {"stop.number", "10"},
            {"stop.unit", "bar"},
            {"span.number", "16"},
            {"span.unit", "bar"},
            {"limit.number", "2.5"},
            {"limit.unit", "%"},
            {"division.number", "0.1"},
            {"division.unit", "bar"}
        };
        for (String[] parameter : all) {
            if (!parameter[0].equals(but)) {
                request.param(parameter[0], parameter[1]);
            }
        }
        return request;
    }

    private static Document page(MockMvcRequestBuilder request, int status) {
        var result = request.exchange();
        assertThat(result).hasStatus(status);
        try {
            return Jsoup.parse(result.getResponse().getContentAsString());
        } catch (UnsupportedEncodingException impossible) {
            throw new AssertionError(impossible);
        }
    }
}

@OnH2
class PlanPagesOnH2Tests extends PlanPagesTests {}

@OnPostgres
class PlanPagesOnPostgresTests extends PlanPagesTests {}
