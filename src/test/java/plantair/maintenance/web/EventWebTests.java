package plantair.maintenance.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.util.MultiValueMap;
import plantair.maintenance.EventKind;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.SentForm;
import plantair.web.Flash;

/** Maintenance events of a machine. It is 2026-06-15, noon UTC, and 07:00 at the works. */
abstract class EventWebTests {

    private static final String LIST = "/compressors/1/events";
    private static final SentForm VALVES = SentForm.to("/compressors/1/events/new")
            .with("happenedOn", "2026-03-01")
            .with("kind", "VALVES")
            .with("mayStep", "")
            .with("doneBy", "Harbour Air Service")
            .with("note", "Second stage plates new");
    private static final List<String> ODD = List.of(
            "",
            " ",
            "-",
            "0",
            "99999999999999999999",
            "NaN",
            "2026-02-30",
            "0001-01-01",
            "9999-12-31",
            "'; drop table maintenance_event; --",
            "<b>5</b>",
            "a\nb",
            "\u0000",
            "🙂",
            "null",
            "OTHER",
            "valves",
            "00000000-0000-0000-0000-000000000000",
            "x".repeat(5_000),
            "a" + "\n".repeat(3_998) + "b");

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    private Plant plant;

    @BeforeEach
    void startWithOneMachine() {
        database.wipe();
        plant = Plant.in(context);
        plant.compressor(plant.site());
    }

    @Test
    void recordsWorkAndAsksForATest() {
        assertThat(SentForm.get(site, LIST).text()).contains("Maintenance of C-1, North works", "No work is on record");

        var answer = sent(VALVES).post(site);

        assertThat(answer.redirect()).isEqualTo(LIST);
        var next = SentForm.get(site, LIST, answer.response().getCookie("SESSION"))
                .page()
                .select("[role=status]");
        assertThat(next.text()).contains("before and after tell whether it helped");
        assertThat(next.select("a").attr("href")).isEqualTo("/compressors/1/tests/new");
        assertThat(SentForm.get(site, LIST).text())
                .contains("1 2026-03-01 valves yes Harbour Air Service Second stage plates new counts");
        assertThat(SentForm.get(site, LIST).text()).contains("Recorded 2026-06-15 by Ann (ann)");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            BELT,         ,    true
            VALVES,       ,    true
            VALVES,       NO,  false
            RINGS,        ,    true
            AIREND,       ,    true
            FILTER,       ,    false
            FILTER,       YES, true
            GAUGE_CHANGE, ,    false
            DRAIN,        ,    false
            OTHER,        ,    false""")
    void asksForATestWhereTheOutputMayHaveChanged(String kind, String typed, boolean asks) {
        var form = sent(VALVES).with("kind", kind).with("mayStep", typed == null ? "" : typed);

        var flash = (Flash) site.post()
                .uri(form.address())
                .params(MultiValueMap.fromSingleValue(form.fields()))
                .exchange()
                .getMvcResult()
                .getFlashMap()
                .get("flash");

        assertThat(flash.code()).isEqualTo(asks ? "event.saved.testAgain" : "register.saved");
        assertThat(flash.next() != null).isEqualTo(asks);
        assertThat(SentForm.get(site, LIST)
                        .page()
                        .selectFirst("#entry-1 td:nth-child(4)")
                        .text())
                .isEqualTo(asks ? "yes" : "no");
    }

    @Test
    void offersEveryKindAndTellsTheCautions() {
        var page = SentForm.get(site, "/compressors/1/events/new");

        assertThat(page.page().select("[name=kind] option")).hasSize(1 + EventKind.values().length);
        assertThat(page.page().select("[name=mayStep] option")).hasSize(3);
        assertThat(page.text()).contains("Lock the machine out", "local rules").doesNotContain("??");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            happenedOn | ``         | happenedOn | Give the date
            happenedOn | 2026-06-16 | happenedOn | still to come
            happenedOn | 2026-02-30 | happenedOn | not a date
            happenedOn | 1949-12-31 | happenedOn | before 1950
            happenedOn | 1899-12-31 | happenedOn | before 1900
            kind       | ``         | kind       | Choose one
            kind       | SPOON      | kind       | not in the list
            mayStep    | MAYBE      | mayStep    | not in the list""")
    void keepsWhatWasTyped(String field, String typed, String beside, String message) {
        var answer = sent(VALVES).with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.typed("doneBy")).isEqualTo("Harbour Air Service");
        assertThat(answer.typed("note")).isEqualTo("Second stage plates new");
        assertThat(SentForm.get(site, LIST).text()).contains("No work is on record");
    }

    @Test
    void needsANoteForOtherWork() {
        var other = sent(VALVES).with("kind", "OTHER");

        assertThat(other.with("note", " ").post(site).error("note")).contains("Say what was done");
        assertThat(other.post(site).redirect()).isEqualTo(LIST);
    }

    @Test
    void takesTodayOfTheSite() {
        plant.compressor(plant.site("Wellington", "Pacific/Auckland"), "C-2");
        var tomorrow = sent(VALVES).with("happenedOn", "2026-06-16");

        assertThat(sent(VALVES).with("happenedOn", "2026-06-15").post(site).status())
                .isEqualTo(302);
        assertThat(tomorrow.at("/compressors/2/events/new").post(site).status()).isEqualTo(302);
        assertThat(sent(VALVES).with("happenedOn", "1950-01-01").post(site).status())
                .isEqualTo(302);
    }

    @Test
    void recordsAFormSentTwiceOnce() {
        var form = sent(VALVES);

        assertThat(form.post(site).redirect()).isEqualTo(LIST);
        assertThat(form.post(site).redirect()).isEqualTo(LIST);

        assertThat(SentForm.get(site, LIST).page().select("tbody tr")).hasSize(1);
    }

    @Test
    void correctsAnEventByAnotherThatTakesItsPlace() {
        sent(VALVES).post(site);
        var correction = sent(VALVES.at("/events/1/correct")).with("kind", "RINGS");

        assertThat(SentForm.get(site, "/events/1/correct").typed("happenedOn")).isEqualTo("2026-03-01");
        assertThat(SentForm.get(site, "/events/1/correct").typed("mayStep")).isEqualTo("YES");
        assertThat(correction.post(site).error("edit.reason")).contains("Type something");
        assertThat(correction
                        .with("edit.reason", "invoice read again")
                        .post(site)
                        .redirect())
                .isEqualTo(LIST);

        var list = SentForm.get(site, LIST);
        assertThat(list.page().select("tr.superseded").eachText()).hasSize(1);
        assertThat(list.text())
                .contains("In place of entry 1: invoice read again", "valves", "superseded by entry 2", "piston rings");
        assertThat(list.page().select("a[href=/events/1/correct], a[href=/events/1/withdraw]"))
                .isEmpty();
        assertThat(SentForm.get(site, "/events/1/correct").redirect()).isEqualTo(LIST);
        assertThat(sent(correction).with("edit.reason", "again").post(site).status())
                .isEqualTo(409);
    }

    @Test
    void saysInTheListOfChangesWhatDiffers() {
        sent(VALVES).post(site);
        sent(VALVES.at("/events/1/correct"))
                .with("kind", "RINGS")
                .with("edit.reason", "invoice read again")
                .post(site);

        var changes = SentForm.get(site, "/changes");

        assertThat(changes.text())
                .contains("Maintenance of C-1 entry: 1 work: valves entry: 2 work: rings invoice read again");
        assertThat(changes.page().select("a[href=/events/2]")).hasSize(1);
    }

    @Test
    void refusesACorrectionThatChangesNothing() {
        sent(VALVES).post(site);

        var answer =
                sent(VALVES.at("/events/1/correct")).with("edit.reason", "none").post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Nothing here differs");
    }

    @Test
    void withdrawsAnEventThatDidNotHappen() {
        sent(VALVES).post(site);
        var withdrawal = sent(SentForm.to("/events/1/withdraw"));

        assertThat(SentForm.get(site, "/events/1/withdraw").text()).contains("Second stage plates new", "2026-03-01");
        assertThat(withdrawal.post(site).error("edit.reason")).contains("Type something");
        assertThat(withdrawal.with("edit.reason", "it was C-2").post(site).redirect())
                .isEqualTo(LIST);

        var list = SentForm.get(site, LIST);
        assertThat(list.text()).contains("withdrawn: not done", "Says that entry 1 did not happen: it was C-2");
        assertThat(list.page().select("tr.superseded")).hasSize(2);
        assertThat(SentForm.get(site, "/changes").text()).contains("withdrawn: yes it was C-2");
        assertThat(SentForm.get(site, "/events/1/withdraw").redirect()).isEqualTo(LIST);
        assertThat(SentForm.get(site, "/events/2/withdraw").redirect()).isEqualTo(LIST);
        assertThat(sent(withdrawal).with("edit.reason", "again").post(site).status())
                .isEqualTo(409);
    }

    @Test
    void takesBackAWithdrawalByCorrectingIt() {
        sent(VALVES).post(site);
        sent(SentForm.to("/events/1/withdraw").with("edit.reason", "slip")).post(site);

        assertThat(SentForm.get(site, "/events/2/correct").text()).contains("says that the work was not done");
        sent(VALVES.at("/events/2/correct"))
                .with("edit.reason", "it was C-1 after all")
                .post(site);

        assertThat(SentForm.get(site, LIST).page().select("tbody tr:not(.superseded)"))
                .hasSize(1);
    }

    @Test
    void listsPageByPage() {
        var machine = plant.compressor(plant.site("South works", "UTC"), "C-9");
        for (int day = 0; day < 51; day++) {
            plant.event(machine, LocalDate.of(2026, 1, 1).plusDays(day), EventKind.DRAIN, false, "");
        }

        assertThat(SentForm.get(site, "/compressors/2/events").text()).contains("Page 1 of 2, 51 in all");
        assertThat(SentForm.get(site, "/compressors/2/events?page=2").page().select("tbody tr"))
                .hasSize(1);
        assertThat(SentForm.get(site, "/compressors/2/events?page=3").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/compressors/2/events?page=-1").status()).isEqualTo(404);
    }

    @Test
    void knowsNoOtherMachineOrEvent() {
        assertThat(SentForm.get(site, "/compressors/9/events").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/compressors/9/events/new").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/events/9/correct").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/events/9/withdraw").status()).isEqualTo(404);
        assertThat(sent(VALVES.at("/compressors/9/events/new")).post(site).status())
                .isEqualTo(404);
        assertThat(SentForm.get(site, "/events/spoon/correct").status()).isEqualTo(400);
    }

    /** Whatever is typed: saved or refused, never a failure of ours. */
    @Test
    void neverFailsOnOddInput() {
        plant.event(
                plant.compressor(plant.site("South works", "UTC"), "C-9"), LocalDate.EPOCH, EventKind.BELT, true, "");
        List<Integer> answers = new ArrayList<>();
        for (String address : List.of("/compressors/1/events/new", "/events/1/correct", "/events/1/withdraw")) {
            SentForm sound = sent(VALVES.at(address)).with("edit.reason", "slip");
            for (String field : sound.fields().keySet()) {
                for (String odd : ODD) {
                    int status = sent(sound).with(field, odd).post(site).status();

                    assertThat(status).as("%s: %s=%s", address, field, odd).isIn(302, 409, 422);
                    answers.add(status);
                }
            }
        }
        assertThat(answers).contains(302, 409, 422);
        assertThat(SentForm.get(site, LIST).status()).isEqualTo(200);
        assertThat(SentForm.get(site, "/changes").status()).isEqualTo(200);
    }

    private static SentForm sent(SentForm form) {
        return form.with("submission", UUID.randomUUID().toString());
    }
}

@OnH2
final class EventOnH2WebTests extends EventWebTests {}

@OnPostgres
final class EventOnPostgresWebTests extends EventWebTests {}
