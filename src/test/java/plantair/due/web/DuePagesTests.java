package plantair.due.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.anonymous;
import static plantair.testing.VesselForms.CERTIFICATE;
import static plantair.testing.VesselForms.VALVE;
import static plantair.testing.VesselForms.interval;
import static plantair.testing.VesselForms.thickness;
import static plantair.testing.VesselForms.valveTest;

import java.io.StringReader;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.equipment.Compressor;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.Plant;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** The due list, the intervals of a site, the calendar. It is 2026-06-15, noon UTC. */
abstract class DuePagesTests {

    private static final String[] NEW = {"60.2", "60.8", "60.5"};

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    private Plant plant;

    @BeforeEach
    void aSmallPlant() {
        database.wipe();
        plant = Plant.in(context);
        var north = plant.site();
        plant.receiver(north);
    }

    private Compressor tested(String day) {
        Compressor compressor = plant.compressor(plant.site("South works " + day, "UTC"), "C-" + day);
        plant.test(compressor, day + "T09:00:00Z", NEW);
        return compressor;
    }

    private void send(SentForm... forms) {
        for (SentForm form : forms) {
            var answer = form.post(site);
            assertThat(answer.status()).as(answer.text()).isEqualTo(302);
        }
    }

    private List<String> rows(String query) {
        return SentForm.get(site, "/due" + query).page().select("#due tbody tr").eachText();
    }

    @Test
    void listsTestsByTheDefaultAndSaysSo() {
        tested("2026-03-14");
        tested("2026-03-15");
        tested("2026-04-15");
        tested("2026-04-16");

        // a quarter on: the day itself is not past yet; within 30 days is soon
        assertThat(rows(""))
                .satisfiesExactly(
                        row -> assertThat(row).contains("C-2026-03-14", "■ overdue 2026-06-14", "our default"),
                        row -> assertThat(row).contains("C-2026-03-15", "▲ within 30 days 2026-06-15"),
                        row -> assertThat(row).contains("C-2026-04-15", "▲ within 30 days 2026-07-15"),
                        row -> assertThat(row).contains("C-2026-04-16", "● later 2026-07-16", "no source"));
        assertThat(SentForm.get(site, "/due").text()).contains("1 thing is overdue.");
    }

    @Test
    void takesTheIntervalOfTheSite() {
        tested("2026-03-14");
        send(interval("TEST", "6", "maintenance plan 4").at("/sites/2/intervals/TEST"));

        assertThat(rows("").get(0)).contains("● later 2026-09-14", "every 6 months");
        send(interval("TEST", "", "").at("/sites/2/intervals/TEST").with("edit.version", "0"));
        assertThat(rows("").get(0)).contains("○ no interval is set –", "nothing says when");
        assertThat(SentForm.get(site, "/").text()).contains("nothing is due");
    }

    /** At noon UTC it is 2026-06-16 in Auckland. */
    @Test
    void takesTheDayOfTheSite() {
        Compressor far = plant.compressor(plant.site("Wellington", "Pacific/Auckland"), "C-9");
        plant.test(far, "2026-03-15T05:00:00Z", NEW); // the 15th there

        assertThat(rows("").get(0)).contains("C-9", "■ overdue 2026-06-15");
    }

    @Test
    void inventsNoIntervalForWhatALawMayAsk() {
        send(VALVE, thickness("2022-06-15", "0.240"));

        assertThat(rows(""))
                .satisfiesExactly(
                        row -> assertThat(row)
                                .contains("R-1 ○ no interval is set – wall thickness", "nothing says when"),
                        row -> assertThat(row).contains("R-1, RV-1 ○ no interval is set"));
        send(interval("VALVE_TEST", "24", "State code, section 12"), interval("EXTERNAL", "12", "our insurer"));
        // installed 2024-05-01
        assertThat(rows(""))
                .satisfiesExactly(
                        row -> assertThat(row).contains("R-1, RV-1 ■ overdue 2026-05-01", "every 24 months"),
                        row -> assertThat(row).contains("R-1 ■ none on record – external inspection"),
                        row -> assertThat(row).contains("R-1 ○ no interval is set"));
        assertThat(SentForm.get(site, "/sites/1/intervals").text())
                .contains("every 24 months State code, section 12", "internal inspection not set");
        send(valveTest("2026-06-01"));
        assertThat(rows("?kind=VALVE_TEST").get(0)).contains("● later 2028-06-01");
        send(valveTest("2026-06-10").with("passed", "NO"));
        assertThat(rows("?kind=VALVE_TEST").get(0)).contains("2028-06-01");
        send(valveTest("2026-06-01")
                .at("/valve-tests/1/correct")
                .with("edit.reason", "x")
                .with("withdrawn", "true"));
        assertThat(rows("?kind=VALVE_TEST").get(0)).contains("■ overdue 2026-05-01");
    }

    @Test
    void takesWhatTheNewestInspectionStates() {
        send(
                thickness("2022-06-15", "0.240").with("nextDue", "2026-06-20"),
                thickness("2021-06-15", "0.241").with("nextDue", "2024-06-20"));

        assertThat(rows(""))
                .singleElement()
                .asString()
                .contains("▲ within 30 days 2026-06-20 wall thickness", "as stated");
    }

    @Test
    void listsCertificatesByTheLongestInForce() {
        send(CERTIFICATE.with("validTo", "2026-06-16"));
        assertThat(rows("").get(0)).contains("R-1 ▲ within 30 days 2026-06-16 certificate runs out", "as stated");
        send(CERTIFICATE.with("number", "P-2").with("validTo", "2029-06-16"));
        assertThat(rows("").get(0)).contains("● later 2029-06-16");
        send(CERTIFICATE.with("number", "P-3").with("validTo", ""));
        assertThat(rows("")).isEmpty();
    }

    @Test
    void saysWhereARequiredCertificateIsMissing() {
        send(PlantForms.RECEIVER.with("tag", "R-2").with("certificateRequired", "YES"));
        assertThat(rows("").get(0)).contains("R-2 ■ none on record – certificate runs out");
        send(CERTIFICATE.at("/receivers/2/certificates").with("inForce", ""));
        assertThat(rows("").get(0)).contains("R-2 ■ none on record");
    }

    @Test
    void listsCalibrationsOfThePlant() {
        plant.gauge("G-1");
        assertThat(rows("").get(0)).contains("G-1 ■ none on record – calibration the plant");
        send(PlantForms.certificate("K-1", "2025-06-10"));
        assertThat(rows("").get(0)).contains("G-1 ■ overdue 2026-06-10 calibration the plant 2025-06-10 as stated");
        send(PlantForms.certificate("K-2", "2026-06-11"));
        assertThat(rows("?site=1&state=LATER").get(0)).contains("2027-06-11");
        assertThat(rows("?state=OVERDUE")).isEmpty();
    }

    @Test
    void listsACalibrationWithTheSiteWhereTheInstrumentIsKept() {
        send(PlantForms.SITE.with("name", "Annex"));
        send(PlantForms.GAUGE.with("tag", "G-N").with("site", "2"));

        assertThat(rows("").get(0)).contains("G-N ■ none on record – calibration Annex");
        assertThat(rows("?site=2")).hasSize(1);
        assertThat(rows("?site=1")).isEmpty();
    }

    @Test
    void filtersAndPages() {
        for (int i = 0; i < 52; i++) {
            plant.compressor(plant.site("S" + i, "UTC"), "C-" + i);
        }

        assertThat(SentForm.get(site, "/due").text()).contains("Page 1 of 2, 52 in all");
        assertThat(rows("?page=2")).hasSize(2);
        assertThat(rows("?site=2")).hasSize(1);
        assertThat(rows("?kind=CALIBRATION")).isEmpty();
        assertThat(SentForm.get(site, "/due?page=3").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/due?kind=SPOON").status()).isEqualTo(422);
        assertThat(SentForm.get(site, "/due?site=spoon").error("site")).isNotEmpty();
    }

    @Test
    void putsOverdueFirstOnTheOverview() {
        tested("2026-03-01");
        send(VALVE, interval("VALVE_TEST", "12", ""));

        var page = SentForm.get(site, "/").page();

        assertThat(page.select("#overdue li").eachText())
                .containsExactly(
                        "■ overdue R-1, RV-1: test of the relief valve since 2025-05-01",
                        "■ overdue C-2026-03-01: pump-up test since 2026-06-01");
        assertThat(page.select("#machines tbody tr").text()).contains("■ overdue");
        assertThat(SentForm.get(site, "/?site=2").page().select("#overdue li")).hasSize(1);
    }

    @Test
    void keepsWhatWasTypedOfAnInterval() {
        var wrong = interval("EXTERNAL", "0", "our insurer").post(site);
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.error("months")).contains("1", "240");
        assertThat(wrong.typed("authority")).isEqualTo("our insurer");
        assertThat(interval("EXTERNAL", "12", "x")
                        .with("edit.reason", "")
                        .post(site)
                        .error("edit.reason"))
                .isNotEmpty();
        assertThat(interval("EXTERNAL", "twelve", "").post(site).error("months"))
                .contains("whole");
        assertThat(interval("CALIBRATION", "12", "").post(site).status()).isEqualTo(404);
        assertThat(interval("TEST", "3", "").post(site).status()).isEqualTo(422); // the default changes nothing
        assertThat(interval("EXTERNAL", "12", "")
                        .with("edit.version", "")
                        .post(site)
                        .status())
                .isEqualTo(409);
        send(interval("EXTERNAL", "12", ""));
        assertThat(interval("EXTERNAL", "24", "").post(site).status()).isEqualTo(409);
        assertThat(SentForm.get(site, "/changes").text())
                .contains("Interval of", "North works, external", "interval: 12 months");
        assertThat(interval("EXTERNAL", "12", "")
                        .post(site, People.of(Role.TECHNICIAN))
                        .status())
                .isEqualTo(403);
    }

    private String made(SentForm form) {
        var answer = form.post(site);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        String address = answer.page().getElementById("calendar-address").text();
        return address.substring(address.indexOf("/calendar/"));
    }

    private List<VEvent> events(String address) throws Exception {
        var response = site.get().uri(address).with(anonymous()).exchange().getResponse();
        assertThat(response.getStatus()).isEqualTo(200);
        assertThat(response.getContentType()).startsWith("text/calendar");
        String text = response.getContentAsString();
        assertThat(text.lines()).allMatch(line -> line.length() <= 75);
        assertThat(text).contains("\r\n");
        return new CalendarBuilder().build(new StringReader(text)).getComponents("VEVENT");
    }

    private static String value(VEvent event, String property) {
        return event.<Property>getProperty(property).orElseThrow().getValue();
    }

    @Test
    void tellsACalendarNamesAndDaysWithoutSignIn() throws Exception {
        tested("2026-03-01");
        send(VALVE, interval("VALVE_TEST", "24", "secret letter 7"));
        String all = made(SentForm.to("/account/calendar").with("site", ""));
        String south = made(SentForm.to("/account/calendar").with("site", "2"));

        assertThat(events(all))
                .extracting(event -> value(event, "SUMMARY"))
                .containsExactly(
                        "Overdue: R-1, RV-1: test of the relief valve (North works)",
                        "Overdue: C-2026-03-01: pump-up test (South works 2026-03-01)");
        VEvent event = events(south).get(0);
        assertThat(value(event, "DTSTART")).isEqualTo("20260601");
        assertThat(value(event, "DTEND")).isEqualTo("20260602");
        assertThat(event.toString()).contains("DTSTART;VALUE=DATE:20260601");
        assertThat(events(south)).hasSize(1);
        assertThat(value(events(south).get(0), "UID")).isEqualTo(value(event, "UID"));
        assertThat(site.get()
                        .uri(all)
                        .with(anonymous())
                        .exchange()
                        .getResponse()
                        .getContentAsString())
                .doesNotContain("secret letter");
        assertThat(jdbc.queryForList("select token_digest from calendar_feed", String.class))
                .hasSize(2)
                .allMatch(digest -> digest.matches("[0-9a-f]{64}") && !all.contains(digest));
    }

    @Test
    void takesACalendarBack() {
        String address = made(SentForm.to("/account/calendar").with("site", ""));
        SentForm revoke = SentForm.to("/account/calendar/1/revoke");

        assertThat(revoke.post(site, People.of(Role.AUDITOR)).status()).isEqualTo(404);
        assertThat(site.get()
                        .uri(address)
                        .with(anonymous())
                        .exchange()
                        .getResponse()
                        .getStatus())
                .isEqualTo(200);
        assertThat(SentForm.get(site, "/account/calendar").text()).contains("made 2026-06-15, tells of all sites");
        assertThat(revoke.post(site).status()).isEqualTo(302);
        assertThat(site.get()
                        .uri(address)
                        .with(anonymous())
                        .exchange()
                        .getResponse()
                        .getStatus())
                .isEqualTo(404);
        assertThat(site.get()
                        .uri("/calendar/guess.ics")
                        .with(anonymous())
                        .exchange()
                        .getResponse()
                        .getStatus())
                .isEqualTo(404);
        assertThat(SentForm.get(site, "/accounts/sign-ins").text())
                .contains("made a calendar address", "took a calendar address back");
    }

    @Test
    void tellsNothingForAnAccountThatWasSwitchedOff() {
        String address = made(SentForm.to("/account/calendar").with("site", ""));

        jdbc.update("update account set enabled = false where id = 1");
        int status = site.get()
                .uri(address)
                .with(anonymous())
                .exchange()
                .getResponse()
                .getStatus();
        database.letInPeople();

        assertThat(status).isEqualTo(404);
    }

    @Test
    void makesNoMoreCalendarsThanAnybodyNeeds() {
        for (int i = 0; i < 20; i++) {
            made(SentForm.to("/account/calendar").with("site", ""));
        }

        var answer = SentForm.to("/account/calendar").with("site", "").post(site);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Up to 20");
        assertThat(SentForm.to("/account/calendar")
                        .with("site", "99")
                        .post(site)
                        .error("site"))
                .contains("no such site");
    }
}

@OnH2
final class DueOnH2PagesTests extends DuePagesTests {}

@OnPostgres
final class DueOnPostgresPagesTests extends DuePagesTests {}
