package plantair.equipment.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

/** Receivers and pipe pieces. It is 2026-06-15, noon UTC. */
abstract class VesselWebTests {

    private static final SentForm TANK = SentForm.to("/receivers")
            .with("site", "1")
            .with("tag", "R-1")
            .with("volume", "240", "[gal_us]")
            .with("volumeKnownBy", "PLATE")
            .with("mawp", "200", "[psi]")
            .with("reliefSet", "180", "[psi]")
            .with("certificateDue", "2026-06-15")
            .with("inService", "true");

    private static final SentForm PIPE = SentForm.to("/pipes")
            .with("site", "1")
            .with("tag", "P-1")
            .with("length", "30", "[ft_i]")
            .with("bore", "2.07", "[in_i]")
            .with("volume", "", "L")
            .with("inService", "true");

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void startWithTwoSites() {
        database.wipe();
        var place = SentForm.to("/sites").with("elevation", "3", "m");
        place.with("name", "Greenwich").with("zone", "UTC").post(site);
        place.with("name", "Kiritimati").with("zone", "Pacific/Kiritimati").post(site);
    }

    @Test
    void registersAReceiverWithNothingAgainstIt() {
        assertThat(TANK.post(site).redirect()).isEqualTo("/receivers/1");

        assertThat(SentForm.get(site, "/receivers").text())
                .contains("R-1 Greenwich nothing on record 240 US gal 200 psi 180 psi 2026-06-15");
        assertThat(SentForm.get(site, "/receivers/1").text())
                .contains("240 US gal, known from its plate", "Never go above the MAWP")
                .doesNotContain("Stop");
    }

    @Test
    void barsAReceiverWhoseReliefValveOpensAboveMawp() {
        var barred = TANK.with("reliefSet", "14", "bar");

        var asked = barred.post(site);
        barred.with("confirmed", asked.token()).post(site);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.warning("reliefSet")).contains("set above the MAWP");
        assertThat(SentForm.get(site, "/receivers/1").text())
                .contains("Stop: do not test with this receiver", "■ relief valve set above MAWP", "inspector");
        assertThat(SentForm.get(site, "/sites/1").text()).contains("■ relief valve set above MAWP");
    }

    /** At noon UTC the island, 14 hours ahead, is one day further. */
    @Test
    void takesTheDateOfTheSiteForACertificate() {
        var island = TANK.with("site", "2");

        var asked = island.post(site);
        island.with("confirmed", asked.token()).post(site);

        assertThat(asked.warning("certificateDue")).contains("has run out");
        assertThat(SentForm.get(site, "/receivers").text()).contains("■ certificate run out");
        assertThat(TANK.post(site).status()).isEqualTo(302);
    }

    @Test
    void saysWhatIsNotKnown() {
        TANK.with("mawp.number", "").with("reliefSet.number", "").post(site);

        assertThat(SentForm.get(site, "/receivers").text()).contains("■ MAWP not known", "■ relief valve not known");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            volume.number    | 0          | volume         | more than zero
            volume.number    | ``         | volume         | Type the number
            volume.unit      | [psi]      | volume         | not a unit of this reading
            volumeKnownBy    | ``         | volumeKnownBy  | Choose one
            mawp.number      | -200       | mawp           | more than zero
            certificateDue   | 2026-02-30 | certificateDue | not a date
            site             | 7          | site           | no such site""")
    void keepsWhatWasTypedOfAReceiver(String field, String typed, String beside, String message) {
        var answer = TANK.with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.typed("tag")).isEqualTo("R-1");
        assertThat(SentForm.get(site, "/receivers").text()).contains("No receiver is registered");
    }

    @Test
    void changesAReceiverOnceAVersion() {
        TANK.post(site);
        var change =
                TANK.at("/receivers/1").with("edit.reason", "filled with water").with("edit.version", "0");

        var first = change.with("volume", "231.5", "[gal_us]")
                .with("volumeKnownBy", "WATER_FILL")
                .post(site);
        var late = change.with("volume", "250", "[gal_us]").post(site);

        assertThat(first.redirect()).isEqualTo("/receivers/1");
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("volume 231.5 US gal 250 US gal", "volume known by water fill plate");
        assertThat(late.typed("volume.number")).isEqualTo("250");
        assertThat(SentForm.get(site, "/changes")
                        .page()
                        .select("tbody tr")
                        .first()
                        .text())
                .contains("volume: 240 US gal volume known by: plate volume: 231.5 US gal volume known by: water fill");
    }

    @Test
    void takesAPipeByLengthAndBoreOrByVolume() {
        assertThat(PIPE.post(site).redirect()).isEqualTo("/sites/1");
        var cooler = PIPE.with("tag", "cooler").with("length.number", "").with("bore.number", "");
        assertThat(cooler.with("volume.number", "12").post(site).status()).isEqualTo(302);

        assertThat(SentForm.get(site, "/pipes").text()).contains("30 ft 2.07 in", "12 L (3.170 US gal)");
        assertThat(PIPE.with("tag", "x").with("volume.number", "3").post(site).error("volume"))
                .contains("not both");
        assertThat(cooler.with("tag", "y").post(site).error("length")).contains("or the volume");
        assertThat(PIPE.with("tag", "z").with("bore.number", "").post(site).error("bore"))
                .contains("Type the number");
        assertThat(PIPE.with("tag", "p-1").post(site).error("tag")).contains("has this name already");
    }

    @Test
    void changesAPipeWithAReason() {
        PIPE.post(site);
        var change = PIPE.at("/pipes/1").with("bore.number", "2.0").with("edit.version", "0");

        assertThat(change.post(site).error("edit.reason")).contains("Type something");
        assertThat(change.with("edit.reason", "measured").post(site).redirect()).isEqualTo("/sites/1");
        assertThat(SentForm.get(site, "/pipes/1/edit").typed("bore.number")).isEqualTo("2.0");
        assertThat(SentForm.get(site, "/pipes/9/edit").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/receivers/9").status()).isEqualTo(404);
    }
}

@OnH2
final class VesselOnH2WebTests extends VesselWebTests {}

@OnPostgres
final class VesselOnPostgresWebTests extends VesselWebTests {}
