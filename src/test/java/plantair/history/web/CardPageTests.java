package plantair.history.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

abstract class CardPageTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void oneMachine() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
    }

    /** By hand: mean 60.5 s; 60.5/0.95 = 63.7, /0.90 = 67.2, /0.80 = 75.6, rounded down. */
    @Test
    void printsTheSecondsOfTheBaselineAndOfEachLimit() {
        plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.test(compressor, "2026-04-05T14:00:00Z", "70.2", "70.8", "70.5");

        var rows = card().select(".pass-by tbody tr").eachText();

        assertThat(rows)
                .containsExactly(
                        "● baseline 60.5 s 100 %",
                        "▲ watch 63 s or longer: 95 %", "▲ plan 67 s or longer: 90 %", "■ act 75 s or longer: 80 %");
    }

    @Test
    void saysWhatItHoldsForAndWhatItIsNot() {
        plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");

        String text = card().select(".pass-by").text();

        assertThat(text)
                .contains(
                        "C-1 North works",
                        "Time it from 140.0 psi to 172.0 psi",
                        "Fill R-1 (120 US gal), P-1 (2.1 US gal) and nothing else",
                        "A quick look, not a test record",
                        "one look crosses no limit",
                        "of 2026-01-05, intake and air pressure 75.0 °F, 14.50 psia",
                        "Printed 2026-06-15",
                        "Never above the MAWP",
                        "did not name it")
                .doesNotContain("??");
        // 186.5 psia over 32 psi of rise, by 297.0 K: 1.96 % for a kelvin
        assertThat(text).contains("warmer at the stop: about 10 % shorter");
    }

    @Test
    void followsTheLimitsOfTheSite() {
        plant.test(compressor, "2026-01-05T14:00:00Z", "60", "60", "60");
        String address = "/sites/" + compressor.site().id() + "/limits";
        var sent = SentForm.to(address)
                .with("watchBelow", "80")
                .with("planBelow", "75")
                .with("actBelow", "50")
                .with("edit.version", SentForm.get(site, address).typed("edit.version"))
                .with("edit.reason", "spare capacity")
                .post(site);

        assertThat(sent.status()).as(sent.text()).isEqualTo(302);
        assertThat(card().select(".pass-by td.num").eachText()).containsExactly("60.0 s", "75 s", "80 s", "120 s");
    }

    @Test
    void warnsOfAGaugeThatIsNoLongerFitted() {
        var old = plant.gauge("G-1");
        var fitted = plant.gauge("G-2");
        plant.plan(compressor).on("2025-01-05T14:00:00Z").with(old).record();
        String before = card().select(".notice").text();

        plant.plan(compressor).on("2026-01-05T14:00:00Z").with(fitted).record();

        assertThat(before).isEmpty();
        assertThat(card().select(".notice").text()).contains("read with another gauge");
        assertThat(card().title()).startsWith("Pass-by card of C-1, North works");
    }

    @Test
    void hasNoTimesWithoutABaseline() {
        Document page = card();

        assertThat(page.select(".notice").text()).contains("There is no card yet");
        assertThat(page.select(".pass-by")).isEmpty();
    }

    /** 172 to 168 psi at the stop is an eighth of the rise. */
    @Test
    void hasNoTimesWhereTheMarksOfTheRunsDiffer() {
        var form = PlantForms.pumpUp("2026-01-05", "60", "60", "52")
                .with("runs[2].stopPressure", "168.0", "[psi]")
                .at("/compressors/" + compressor.id() + "/tests")
                .with(
                        "receivers",
                        String.valueOf(plant.receiver(compressor.site()).id()))
                .with("pipes", "");
        assertThat(form.post(site).status()).isEqualTo(302);

        assertThat(card().select(".notice").text()).contains("between different marks");
        assertThat(card().select(".pass-by")).isEmpty();
    }

    @Test
    void isFoundFromThePageOfTheMachineOnly() {
        var link = SentForm.get(site, "/compressors/" + compressor.id())
                .page()
                .select("a[href$=/card]")
                .attr("href");

        assertThat(link).isEqualTo("/compressors/" + compressor.id() + "/card");
        assertThat(SentForm.get(site, "/compressors/999/card").status()).isEqualTo(404);
    }

    private Document card() {
        var answer = SentForm.get(site, "/compressors/" + compressor.id() + "/card");
        assertThat(answer.status()).isEqualTo(200);
        return answer.page();
    }
}

@OnH2
final class CardPageOnH2Tests extends CardPageTests {}

@OnPostgres
final class CardPageOnPostgresTests extends CardPageTests {}
