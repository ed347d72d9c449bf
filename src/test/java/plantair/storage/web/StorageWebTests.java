package plantair.storage.web;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.pumpUp;

import jakarta.servlet.http.Cookie;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.testing.Database;
import plantair.testing.DemandForms;
import plantair.testing.NightsOfLeaks;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.SentForm;
import plantair.testing.VesselForms;

abstract class StorageWebTests {

    private static final String STORAGE = "/sites/1/storage";
    private static final String PRESSURES = "&cutIn.number=112&cutIn.unit=[psi]&lowest.number=100&lowest.unit=[psi]";

    /** 500 cfm short for 3.25 min within 12 psi. */
    private static final String WORKED =
            "event.number=500&event.unit=[cft_i]/min&lasts.number=3.25&lasts.unit=min" + PRESSURES;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void siteAtSeaLevel() {
        database.wipe();
        send(SITE.with("barometer", "14.7", "[psi]").with("elevation", "", "[ft_i]"), COMPRESSOR, RECEIVER, PIPE);
    }

    private void send(SentForm... forms) {
        for (SentForm form : forms) {
            assertThat(form.post(site).status()).as(form.address()).isEqualTo(302);
        }
    }

    private Document page(String query) {
        var answer = SentForm.get(site, STORAGE + (query.isEmpty() ? "" : "?" + query));
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        assertThat(answer.text()).doesNotContain("??");
        return answer.page();
    }

    @Test
    void fillsInAnEventOfTheDemandList() {
        send(DemandForms.FLUSH);

        Document empty = page("");
        assertThat(empty.select("#events a").eachText()).containsExactly("Back-flush");
        Document filled = page(empty.select("#events a").attr("href").split("\\?")[1]);

        assertThat(filled.select("[name=event.number]").val()).isEqualTo("100.0");
        assertThat(filled.select("[name=lasts.number]").val()).isEqualTo("12");
        assertThat(filled.select("[name=lasts.unit] [selected]").val()).isEqualTo("s");
        assertThat(filled.select("[name=receivers][checked]")).isNotEmpty();
        assertThat(page("use=nonsense").select("[name=event.number]").val()).isEmpty();
    }

    private String answer(String query) {
        return page(query).select(".answer").text();
    }

    /** A worked note on receivers (read in a copy): 500 cfm for 3.25 min within 12 psi at 14.7 psia: 1,990.63 ft³. */
    @Test
    void agreesWithAWorkedReceiver() {
        Document page = page(WORKED);

        assertThat(page.select(".equation").text())
                .contains("3.25000 min × 14.7000 psia × 500.000 cfm / 12.0000 psi = 1990.63 ft³");
        assertThat(page.select(".answer").text())
                .isEqualTo("To carry it for 3.25 min takes 14890 US gal of receivers.");
    }

    /** Own: 240 gal from 110 to 90 psig at 40 scfm last 1.0913 min (StoredAirReferenceTests). */
    @Test
    void tellsHowLongTheReceiversCarryAnEvent() {
        String query = "receivers=1&more.number=120&more.unit=[gal_us]&event.number=40&event.unit=[cft_i]/min"
                + "&cutIn.number=110&cutIn.unit=[psi]&lowest.number=90&lowest.unit=[psi]";

        assertThat(answer(query)).isEqualTo("240.0 US gal of receivers carry it for 65.5 s.");
        assertThat(page(query).select(".equation").text()).contains("= 1.09127 min");
        assertThat(page(query).text()).contains("They do not fill again");
    }

    /** Esposito (StoredAirReferenceTests): 20 scfm for 6 min from 100 to 80 psi, 5 scfm fed in: 495 gal. */
    @Test
    void takesWhatRunsMeanwhileOff() {
        String query = "event.number=20&event.unit=[cft_i]/min&lasts.number=6:00&lasts.unit=min"
                + "&cutIn.number=100&cutIn.unit=[psi]&lowest.number=80&lowest.unit=[psi]"
                + "&capacity.number=5&capacity.unit=[cft_i]/min";

        assertThat(answer(query)).contains("takes 494.8 US gal");
        assertThat(answer(query + "&receivers=1")).startsWith("Not enough").contains("there are 120.0 US gal");
        assertThat(answer(query + "&more.number=500&more.unit=[gal_us]")).startsWith("Enough");
        assertThat(page(query + "&receivers=1&steady.number=1&steady.unit=[cft_i]/min")
                        .text())
                .contains("From 80.0 psig they are at 100.0 psig again after 5.46 min")
                .contains("typed here");
    }

    @Test
    void saysThatNothingIsShort() {
        assertThat(answer(WORKED + "&capacity.number=500&capacity.unit=[cft_i]/min"))
                .contains("Nothing is short");
    }

    /** Machines as measured, leaks as tested; what is not known well enough is not told. */
    @Test
    void startsFromWhatTheSiteHas() {
        send(pumpUp("2026-05-12", "60.2", "60.8", "60.5"));
        NightsOfLeaks.in(context).record("2026-04-01", "90 s", "410 s", "34 [cft_i]/min");

        Document start = page("");
        assertThat(start.select("input[name=receivers][checked], input[name=machines][checked]"))
                .hasSize(2);
        assertThat(start.select(".answer, .error")).isEmpty();

        String query = "receivers=1&machines=1&event.number=50&event.unit=[cft_i]/min&lasts.number=%s&lasts.unit=s"
                + "&cutIn.number=160&cutIn.unit=[psi]&lowest.number=140&lowest.unit=[psi]";
        Document page = page(query.formatted("60"));
        assertThat(page.text())
                .contains("measured: C-1, carried to 160.0 psig", "the newest leak test of the site")
                .containsPattern("Compressors deliver 34\\.\\d+ ± ");
        assertThat(page.select(".answer").text())
                .startsWith("It cannot be told")
                .contains("±");
        assertThat(answer(query.formatted("20"))).startsWith("Enough");
        assertThat(answer(query.formatted("200"))).startsWith("Not enough");
    }

    @Test
    void leavesOutAMachineTestedTooFarOff() {
        send(pumpUp("2026-05-12", "60.2", "60.8", "60.5"));

        assertThat(page("machines=1&" + WORKED.replace("112", "60").replace("100", "40"))
                        .text())
                .contains("Left out C-1 tested too far");
    }

    /** Own (StoredAirReferenceTests): 240 gal, 90 to 120 psig, 60 cfm: 13.7 starts an hour at half load; 330 gal would do. */
    @Test
    void warnsOfShortCycles() {
        String query = "receivers=1&more.number=120&more.unit=[gal_us]&capacity.number=60&capacity.unit=[cft_i]/min"
                + "&cutOut.number=120&cutOut.unit=[psi]&cutIn.number=90&cutIn.unit=[psi]&lowest.number=80&lowest.unit=[psi]";

        String starts = page(query + "&control=START_STOP&steady.number=30&steady.unit=[cft_i]/min")
                .select("#switching tbody tr")
                .text();
        assertThat(starts).contains("too often now", "13.7", "10", "329.9 US gal");
        assertThat(page(query + "&control=START_STOP").select("#switching").text())
                .contains("too often at half load");
        assertThat(page(query + "&control=LOAD_UNLOAD").select("#switching").text())
                .contains("not too often");
        assertThat(page(query).select("#switching").text()).contains("not judged");
    }

    /** From 100 to a mean of 110 psig: 5.4 % of power and 8.7 % of use (StoredAirReferenceTests). */
    @Test
    void tellsWhatTheBandCosts() {
        Document page = page("cutOut.number=119&cutOut.unit=[psi]&cutIn.number=101&cutIn.unit=[psi]"
                + "&lowest.number=100&lowest.unit=[psi]");

        assertThat(page.select("section[aria-labelledby=band]").text()).contains("5.4 % more power", "8.7 % more air");
    }

    @Test
    void answersInTheUnitsOfThePerson() {
        var answer = SentForm.get(site, STORAGE + "?" + WORKED, new Cookie("units", "BAR_CUBIC"));

        assertThat(answer.text()).contains("= 56.3682 m³");
    }

    /** The register has 200 psi for both; a valve of 180 psi, and then an inspection, bring it lower. */
    @Test
    void neverReckonsAboveWhatAReceiverMaySee() {
        String query = "receivers=1&cutOut.number=%s&cutOut.unit=[psi]" + PRESSURES;
        assertThat(page("").select("section[aria-labelledby=limits]").text()).contains("R-1: 200 psi");
        assertThat(SentForm.get(site, STORAGE + "?" + query.formatted("201")).error("cutOut"))
                .contains("201 psi is above the maximum allowable working pressure of R-1, 200 psi");
        assertThat(page(query.formatted("200"))).isNotNull();

        send(VesselForms.VALVE);

        var refused = SentForm.get(site, STORAGE + "?" + query.formatted("181"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.error("cutOut"))
                .contains("181 psi is above 180 psi, at which the relief valve of R-1 opens");
        assertThat(refused.page().select(".answer, .equation")).isEmpty();
        assertThat(SentForm.get(
                                site,
                                STORAGE
                                        + "?receivers=1&cutIn.number=181&cutIn.unit=[psi]&lowest.number=100&lowest.unit=[psi]")
                        .error("cutIn"))
                .contains("181 psi is above");
        assertThat(page(query.formatted("180"))).isNotNull();
    }

    @Test
    void saysWhichReceiverIsNotKnown() {
        send(RECEIVER.with("tag", "R-2").with("mawp", "", "[psi]").with("reliefSet", "", "[psi]"));

        assertThat(page("").text()).contains("R-2: how high it may be taken is not known");
    }

    @ParameterizedTest
    @CsvSource({
        "receivers=9, receivers, no receiver in service",
        "receivers=x, receivers, no receiver in service",
        "machines=1, machines, no measured machine",
        "more.number=0&more.unit=L, more, more than zero",
        "event.number=-5&event.unit=L/s, event, more than zero",
        "event.number=5&event.unit=bar, event, not a unit",
        "lasts.number=1&lasts.unit=min, event, Type what it takes",
        "event.number=5&event.unit=L/s&lasts.number=0&lasts.unit=min, lasts, more than zero",
        "event.number=5&event.unit=L/s&lasts.number=99999&lasts.unit=min, lasts, more than a week",
        "steady.number=-1&steady.unit=L/s, steady, below zero",
        "leaks.number=-1&leaks.unit=L/s, leaks, below zero",
        "capacity.number=0&capacity.unit=L/s, capacity, more than zero",
        "cutOut.number=112&cutOut.unit=[psi], cutOut, must be above cut-in",
        "cutOut.number=ten&cutOut.unit=[psi], cutOut, is not a number",
        "control=STEAM, control, not"
    })
    void saysBesideTheFieldWhatIsWrong(String query, String beside, String message) {
        var answer = SentForm.get(site, STORAGE + "?" + query + PRESSURES);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.page().select(".answer")).isEmpty();
        assertThat(answer.text()).doesNotContain("??");
    }

    @ParameterizedTest
    @CsvSource({
        "cutIn.number=&cutIn.unit=bar&lowest.number=5&lowest.unit=bar, cutIn",
        "cutIn.number=5&cutIn.unit=bar&lowest.number=5&lowest.unit=bar, cutIn",
        "cutIn.number=5000&cutIn.unit=bar&lowest.number=5&lowest.unit=bar, cutIn",
        "cutIn.number=5&cutIn.unit=bar&lowest.number=0&lowest.unit=bar, lowest"
    })
    void asksForPressuresThatCanBe(String query, String beside) {
        var answer = SentForm.get(site, STORAGE + "?" + query);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void isReadByEverybody(Role role) {
        assertThat(SentForm.get(site, STORAGE, People.of(role)).status()).isEqualTo(200);
    }

    @Test
    void knowsNoOtherSite() {
        assertThat(SentForm.get(site, "/sites/9/storage").status()).isEqualTo(404);
    }
}

@OnH2
final class StorageWebOnH2Tests extends StorageWebTests {}

@OnPostgres
final class StorageWebOnPostgresTests extends StorageWebTests {}
