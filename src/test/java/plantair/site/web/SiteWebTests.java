package plantair.site.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.SentForm;

abstract class SiteWebTests {

    private static final SentForm NORTH = SentForm.to("/sites")
            .with("name", "North mill")
            .with("zone", "America/Denver")
            .with("elevation", "5280", "[ft_i]")
            .with("barometer", "", "[in_i'Hg]")
            .with("tariff", "", "/(kW.h)");

    private static final SentForm CHANGE = NORTH.at("/sites/1")
            .with("elevation", "5290.0", "[ft_i]")
            .with("edit.reason", "survey of May")
            .with("edit.version", "0");

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void startEmpty() {
        database.wipe();
    }

    @Test
    void registersASiteAndWritesItDown() {
        var answer = NORTH.post(site);

        assertThat(answer.status()).isEqualTo(302);
        assertThat(answer.redirect()).isEqualTo("/sites/1");
        assertThat(SentForm.get(site, "/sites/1").text()).contains("North mill", "5280 ft", "America/Denver");
        assertThat(SentForm.get(site, "/sites").text()).contains("North mill");
        assertThat(SentForm.get(site, "/changes").page().select("tbody tr").text())
                .isEqualTo(
                        "2026-06-15 12:00:00 UTC 2026-06-15 06:00:00 America/Denver Ann (ann) line 1 Site North mill new "
                                + "name: North mill zone: America/Denver elevation: 5280 ft registered");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            elevation.number | 7 5       | elevation | has a blank inside
            elevation.number | 1e999     | elevation | power of ten
            elevation.number | 20000     | elevation | from -500 m to 5000 m
            elevation.number | ``        | elevation | Give the elevation or the normal barometer
            elevation.unit   | furlong   | elevation | not a unit of this reading
            barometer.number | 760       | barometer | from 50 kPa to 110 kPa
            barometer.number | -29.9     | barometer | from 50 kPa to 110 kPa
            tariff.number    | -0.12     | tariff    | more than zero
            tariff.number    | 0,12      | tariff    | has a comma
            tariff.number    | 0.12      | currency  | say in which currency
            currency         | Dollar    | currency  | no code of a currency
            currency         | XTS       | currency  | no code of a currency
            zone             | Mars/Base | zone      | not a time zone
            name             | ``        | name      | Type something""")
    void keepsWhatWasTypedAndSavesNothing(String field, String typed, String beside, String message) {
        var answer = NORTH.with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.typed("name")).isEqualTo(field.equals("name") ? "" : "North mill");
        if (field.endsWith("number")) {
            assertThat(answer.typed(field)).isEqualTo(typed);
        }
        assertThat(SentForm.get(site, "/sites").text()).contains("No site yet");
        assertThat(SentForm.get(site, "/changes").text()).contains("Nothing has been entered yet");
    }

    @Test
    void keepsThePriceOfElectricityAsTyped() {
        NORTH.post(site);

        var answer = CHANGE.with("elevation.number", "5280")
                .with("currency", " usd ")
                .with("tariff", "0.120", "/(kW.h)")
                .post(site);

        assertThat(answer.redirect()).isEqualTo("/sites/1");
        assertThat(SentForm.get(site, "/sites/1").text()).contains("Tariff 0.120 USD a kilowatt hour");
        var form = SentForm.get(site, "/sites/1/edit");
        assertThat(form.typed("currency")).isEqualTo("USD");
        assertThat(form.typed("tariff.number")).isEqualTo("0.120");
        assertThat(SentForm.get(site, "/changes")
                        .page()
                        .select("tbody tr")
                        .first()
                        .text())
                .contains("currency: USD tariff: 0.120 per kWh");
    }

    /** Station pressure at 5280 ft: 12.1 psia, which is 24.6 inHg (U.S. Standard Atmosphere 1976, from memory). */
    @Test
    void asksAboutABarometerReducedToSeaLevel() {
        var high = NORTH.with("barometer", "29.92", "[in_i'Hg]");

        var asked = high.post(site);
        var confirmed = high.with("confirmed", asked.token()).post(site);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.warning("barometer")).contains("29.92 inHg", "5280 ft", "about 24.6");
        assertThat(asked.page().select("main a[href=#confirmed]")).hasSize(1);
        assertThat(confirmed.status()).isEqualTo(302);
        assertThat(NORTH.with("name", "South")
                        .with("barometer", "24.5", "[in_i'Hg]")
                        .post(site)
                        .status())
                .isEqualTo(302);
    }

    @Test
    void refusesANameThatDiffersInCapitalsOnly() {
        NORTH.post(site);

        var answer = NORTH.with("name", "NORTH MILL").post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error("name")).contains("has this name already");
        assertThat(answer.typed("name")).isEqualTo("NORTH MILL");
    }

    @Test
    void changesWithAReasonAndTellsOnlyWhatDiffers() {
        NORTH.post(site);

        var answer = CHANGE.post(site);

        assertThat(answer.redirect()).isEqualTo("/sites/1");
        assertThat(SentForm.get(site, "/changes")
                        .page()
                        .select("tbody tr")
                        .first()
                        .text())
                .isEqualTo(
                        "2026-06-15 12:00:00 UTC 2026-06-15 06:00:00 America/Denver Ann (ann) line 2 Site North mill "
                                + "elevation: 5280 ft elevation: 5290.0 ft survey of May");
    }

    @Test
    void asksForAReasonAndForADifference() {
        NORTH.post(site);

        assertThat(CHANGE.with("edit.reason", " ").post(site).error("edit.reason"))
                .contains("Type something");
        var same = CHANGE.with("elevation.number", "5280").post(site);
        assertThat(same.status()).isEqualTo(422);
        assertThat(same.text()).contains("Nothing here differs");
    }

    @Test
    void showsBothWhenSomebodyElseWasFaster() {
        NORTH.post(site);
        CHANGE.post(site, People.of(Role.MANAGER));

        var late = CHANGE.with("elevation", "1612", "m").post(site);

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text())
                .contains("Somebody else changed this", "Bo (bo), 2026-06-15 12:00:00 UTC: survey of May");
        assertThat(late.page().select("main tbody tr").eachText()).containsExactly("elevation 5290.0 ft 1612 m");
        assertThat(late.typed("elevation.number")).isEqualTo("1612");
        assertThat(SentForm.get(site, "/sites/1").text()).contains("5290.0 ft").doesNotContain("1612");

        var again = CHANGE.with("elevation", "1612", "m")
                .with("edit.version", late.typed("edit.version"))
                .post(site);

        assertThat(again.status()).isEqualTo(302);
        assertThat(SentForm.get(site, "/sites/1").text()).contains("1612 m");
    }

    /** What was typed cannot be read; then the register's side is shown whole. */
    @Test
    void showsTheRegistersSideBesideAFormWithErrors() {
        NORTH.post(site);
        CHANGE.with("edit.who", "Bo").post(site);

        var late = CHANGE.with("name", "").post(site);

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.page().select("main tbody tr").eachText()).contains("name North mill", "elevation 5290.0 ft");
        assertThat(late.error("name")).contains("Type something");
    }

    @Test
    void opensTheFormWithTheFactsOfTheSite() {
        NORTH.post(site);

        var form = SentForm.get(site, "/sites/1/edit");

        assertThat(form.typed("name")).isEqualTo("North mill");
        assertThat(form.typed("zone")).isEqualTo("America/Denver");
        assertThat(form.typed("elevation.number")).isEqualTo("5280");
        assertThat(form.typed("edit.version")).isEqualTo("0");
        assertThat(form.page().title()).startsWith("Change site North mill");
        assertThat(SentForm.get(site, "/sites/new").typed("zone")).isEqualTo("UTC");
        assertThat(SentForm.get(site, "/sites/new").page().title()).startsWith("Register a site");
    }

    @ParameterizedTest
    @CsvSource({"/sites/9, 404", "/sites/9/edit, 404", "/sites/x, 400", "/sites?page=2, 404"})
    void findsNoOtherSite(String address, int status) {
        assertThat(SentForm.get(site, address).status()).isEqualTo(status);
        assertThat(CHANGE.at("/sites/9").post(site).status()).isEqualTo(404);
    }
}

@OnH2
final class SiteOnH2WebTests extends SiteWebTests {}

@OnPostgres
final class SiteOnPostgresWebTests extends SiteWebTests {}
