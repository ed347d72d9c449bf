package plantair.offer.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.quantity.FlowBasis;
import plantair.testing.Database;
import plantair.testing.OfferForms;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

abstract class OfferWebTests {

    private static final SentForm OLDER = OfferForms.OFFER;
    private static final SentForm NEWER = OfferForms.OTHER;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void siteWithATariff() {
        database.wipe();
        PlantForms.SITE
                .with("barometer", "14.5", "[psi]")
                .with("elevation", "", "[ft_i]")
                .with("currency", "USD")
                .with("tariff", "0.11", "/(kW.h)")
                .post(site);
    }

    @Test
    void registersAnOfferAsTypedAndWritesItDown() {
        var answer = OLDER.post(site);

        assertThat(answer.redirect()).isEqualTo("/sites/1/offers");
        assertThat(SentForm.get(site, "/offers/1").text())
                .contains("100 cfm", "14.696 psia, 60 °F, dry", "24000 USD", "2026-05-01", "Photos and papers");
        assertThat(SentForm.get(site, "/changes").text()).contains("Offer Anvil 30", "input power: 18 kW", "open: yes");
    }

    @Test
    void withdrawsWithAReasonAndKeepsIt() {
        OLDER.post(site);
        NEWER.post(site);

        var answer = OLDER.at("/offers/1")
                .with("open", "false")
                .with("edit.reason", "lost")
                .with("edit.version", "0")
                .post(site);

        assertThat(answer.redirect()).isEqualTo("/offers/1");
        assertThat(SentForm.get(site, "/offers/1").text()).contains("Withdrawn or lost");
        Document list = SentForm.get(site, "/sites/1/offers").page();
        assertThat(list.select("#compared")).isEmpty();
        assertThat(list.text()).contains("Anvil 30", "withdrawn", "Two open offers are needed");
        assertThat(SentForm.get(site, "/changes").text()).contains("open: no", "lost");
    }

    /** 100 of 14.696 psia, 60 °F, dry are 102.912 of 14.5 psia, 68 °F: which offer is larger turns on it (OfferTests). */
    @Test
    void putsOffersOnOneBasis() {
        OLDER.post(site);
        NEWER.post(site);

        Document page = SentForm.get(site, "/sites/1/offers").page();

        var rows = page.select("#compared tbody tr");
        assertThat(rows.get(0).select("td").get(0).text()).isEqualTo("102.9 cfm");
        assertThat(rows.get(1).select("td").get(0).text()).isEqualTo("102.0 cfm");
        assertThat(rows.get(0).select("td").get(3).text()).isEqualTo("17.49");
        assertThat(rows.get(1).select("td").get(3).text()).isEqualTo("20.59");
        assertThat(page.select("main").text())
                .contains("Bellows 30 takes 17.7 % more for the same air than Anvil 30")
                .contains("Bellows 30 and Anvil 30 deliver the same, as far as can be told: 0.9 % apart")
                .contains("witness a pump-up test");
    }

    /** 18 kW for 102.912 cfm, asked for 102 cfm all year at 0.11: 18/102.912 · 102 · 8760 · 0.11 = 17,191. */
    @Test
    void tellsAYearForTheSameAir() {
        OLDER.post(site);
        NEWER.post(site);

        var rows = SentForm.get(site, "/sites/1/offers").page().select("#compared tbody tr");

        assertThat(rows.get(0).select("td").get(6).text()).isEqualTo("17191");
        assertThat(rows.get(1).select("td").get(6).text()).isEqualTo("20236");
    }

    /** 18.3 kW for 102 cfm are 17.94 a 100, 18 for 102.912 are 17.49: 2.6 % apart, and 6 % may be missed. */
    @Test
    void callsADifferenceWithinTheToleranceNone() {
        OLDER.post(site);
        NEWER.with("power", "18.3", "kW").post(site);

        assertThat(SentForm.get(site, "/sites/1/offers").text())
                .contains("take the same for the same air, as far as can be told: 2.6 % apart")
                .doesNotContain("more for the same air");
    }

    @ParameterizedTest
    @EnumSource(
            value = FlowBasis.class,
            names = {"DISPLACEMENT", "UNKNOWN"})
    void saysWhyAnOfferIsNotCompared(FlowBasis basis) {
        OLDER.post(site);
        NEWER.with("basis", basis.name()).post(site);

        Document page = SentForm.get(site, "/sites/1/offers").page();

        assertThat(page.select("#compared tbody tr")).hasSize(1);
        assertThat(page.text()).contains("Bellows 30 is not compared: its flow is");
    }

    @Test
    void saysThatPowerWasMovedFar() {
        OLDER.post(site);
        NEWER.with("pressure", "150", "[psi]").post(site);

        assertThat(SentForm.get(site, "/sites/1/offers")
                        .page()
                        .select("#compared .warning")
                        .text())
                .contains("far: ask the maker");
    }

    @Test
    void leavesMoneyOutWithoutATariff() {
        PlantForms.SITE.with("name", "South works").post(site);
        OLDER.at("/sites/2/offers").post(site);
        NEWER.at("/sites/2/offers").post(site);

        Document page = SentForm.get(site, "/sites/2/offers").page();

        assertThat(page.select("#compared tbody tr").first().select("td").get(6).text())
                .isEqualTo("not known");
        assertThat(page.select("main a[href=/sites/2/edit]")).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            label              | ``      | label       | Type something
            flow.number        | 0       | flow        | more than zero
            flow.number        | 1,5     | flow        | has a comma
            flow.unit          | bar     | flow        | not a unit of this reading
            basis              | CUBITS  | basis       | choose
            pressure.number    | ``      | pressure    | Type the number
            pressure.number    | 9999999 | pressure    | cannot be the gauge pressure
            power.number       | -18     | power       | more than zero
            station.number     | 29.92   | station     | cannot be a station pressure
            station.number     | -14.5   | station     | cannot be a station pressure
            temperature.number | -9999   | temperature | cannot be intake air
            humidity.number    | 101     | humidity    | from 0 to 100
            price.number       | 0       | price       | more than zero
            offeredOn          | 1 May   | offeredOn   | not a date""")
    void keepsWhatWasTypedAndSavesNothing(String field, String typed, String beside, String message) {
        var answer = OLDER.with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        if (field.endsWith("number")) {
            assertThat(answer.typed(field)).isEqualTo(typed);
        }
        assertThat(SentForm.get(site, "/sites/1/offers").text()).contains("No offer yet");
    }

    @Test
    void refusesALabelTwice() {
        OLDER.post(site);

        assertThat(OLDER.with("label", "ANVIL 30").post(site).error("label")).contains("has this name already");
    }

    @ParameterizedTest
    @CsvSource({
        "offers=1, offers",
        "offers=1&offers=99, offers",
        "offers=1&offers=x, offers",
        "offers=1&offers=2&pressure.number=0, pressure",
        "offers=1&offers=2&hours.number=9000, hours",
        "offers=1&offers=2&hours.number=0, hours",
        "offers=1&offers=2&tariff.number=free, tariff",
        "offers=1&offers=2&flow.number=-1, flow",
        "offers=1&offers=2&humidity.number=200, humidity",
        "offers=1&offers=2&temperature.number=500, temperature"
    })
    void saysBesideTheFieldWhatIsWrongWithTheQuestion(String query, String beside) {
        OLDER.post(site);
        NEWER.post(site);
        String rest = "&pressure.unit=bar&pressure.number=7&temperature.number=20&temperature.unit=Cel"
                + "&humidity.number=50&humidity.unit=%&flow.number=&flow.unit=L/s&hours.number=&hours.unit=h"
                + "&tariff.number=&tariff.unit=/(kW.h)";
        String asked = query;
        for (String part : rest.substring(1).split("&")) {
            String name = part.substring(0, part.indexOf('='));
            if (!asked.contains(name + "=")) {
                asked += "&" + part;
            }
        }

        var answer = SentForm.get(site, "/sites/1/offers?" + asked);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).isNotBlank();
        assertThat(answer.text()).doesNotContain("??");
    }

    @Test
    void letsNobodyElseManageOffers() {
        OLDER.post(site);

        for (Role role : new Role[] {Role.TECHNICIAN, Role.AUDITOR}) {
            assertThat(NEWER.post(site, People.of(role)).status()).isEqualTo(403);
        }
        assertThat(SentForm.get(site, "/sites/1/offers").text()).doesNotContain("Bellows");
    }
}

@OnH2
final class OfferWebOnH2Tests extends OfferWebTests {}

@OnPostgres
final class OfferWebOnPostgresTests extends OfferWebTests {}
