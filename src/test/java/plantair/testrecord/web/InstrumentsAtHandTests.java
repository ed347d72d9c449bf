package plantair.testrecord.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.instrument.Instrument;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;
import plantair.testing.SentForm.Answer;
import plantair.testing.SentLog;

/** A form offers the instruments at hand, on asking those of every site, and what was chosen never goes missing. */
abstract class InstrumentsAtHandTests {

    private static final String GAUGES = "select[name=gauge] option[value~=.]";

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    private Instrument there;

    @BeforeEach
    void twoSites() {
        database.wipe();
        Plant plant = Plant.in(context);
        var here = plant.site();
        plant.compressor(here);
        plant.receiver(here);
        PlantForms.PIPE.post(site);
        plant.gauge("G-HERE", here, true);
        plant.gauge("G-CARRIED");
        plant.gauge("G-RETIRED", here, false);
        there = plant.gauge("G-THERE", plant.site("South works", "UTC"), true);
    }

    private static List<String> gauges(Answer answer) {
        return answer.page().select(GAUGES).eachText();
    }

    private SentForm test() {
        return PlantForms.pumpUp("2026-06-02", "62.2", "62.8", "62.5");
    }

    private void record(long gauge) {
        assertThat(test().with("gauge", String.valueOf(gauge)).post(site).redirect())
                .isEqualTo("/tests/1");
    }

    @Test
    void offersThoseOfTheSiteAndThoseThatAreCarried() {
        assertThat(gauges(SentForm.get(site, "/compressors/1/tests/new"))).containsExactly("G-CARRIED", "G-HERE");
        assertThat(gauges(SentForm.get(site, "/guided/1"))).containsExactly("G-CARRIED", "G-HERE");
    }

    @Test
    void offersThoseOfEverySiteAndKeepsWhatWasTyped() {
        Answer answer = test().with("action", "anywhere")
                .with("tester", "Bo")
                .with("gauge", "1")
                .post(site);

        assertThat(answer.status()).isEqualTo(200);
        assertThat(gauges(answer)).containsExactly("G-CARRIED", "G-HERE", "G-THERE");
        assertThat(answer.typed("tester")).isEqualTo("Bo");
        assertThat(answer.typed("gauge")).isEqualTo("1");
        assertThat(answer.typed("anywhere")).isEqualTo("true");
        assertThat(answer.page().select("button[value=anywhere]")).isEmpty();
        assertThat(gauges(SentForm.get(site, "/guided/1?anywhere=true")))
                .containsExactly("G-CARRIED", "G-HERE", "G-THERE");
    }

    /** Also on the form of the next test, which names the instruments of the last. */
    @Test
    void takesABorrowedGaugeAndOffersItAgain() {
        record(there.id());

        assertThat(SentForm.get(site, "/tests/1").text()).contains("G-THERE");
        assertThat(gauges(SentForm.get(site, "/compressors/1/tests/new"))).contains("G-THERE");
        assertThat(SentForm.get(site, "/compressors/1/tests/new").typed("gauge"))
                .isEqualTo(String.valueOf(there.id()));
        assertThat(SentForm.get(site, "/guided/1").typed("gauge")).isEqualTo(String.valueOf(there.id()));
    }

    /** A correction that lost the gauge would have another uncertainty. */
    @Test
    void keepsTheGaugeOfATestThatIsCorrectedAfterItWasRetired() {
        record(3);

        Answer form = SentForm.get(site, "/tests/1/supersede");
        assertThat(gauges(form)).containsExactly("G-CARRIED", "G-HERE", "G-RETIRED");
        assertThat(form.typed("gauge")).isEqualTo("3");
        Answer more = test().at("/tests/1/supersede")
                .with("action", "anywhere")
                .with("gauge", "3")
                .post(site);
        assertThat(gauges(more)).containsExactly("G-CARRIED", "G-HERE", "G-RETIRED", "G-THERE");
    }

    @Test
    void namesTheLoggerAmongThoseAtHand() {
        record(1);
        SentForm columns = SentLog.of(1, "fill.csv", SentLog.rise()).columns(site);
        String loggers = "select[name=logger] option[value~=.]";

        assertThat(columns.with("action", "look")
                        .post(site)
                        .page()
                        .select(loggers)
                        .eachText())
                .containsExactly("G-CARRIED", "G-HERE");
        Answer more = columns.with("action", "anywhere")
                .with("note", "from the drawer")
                .post(site);
        assertThat(more.status()).isEqualTo(200);
        assertThat(more.page().select(loggers).eachText()).containsExactly("G-CARRIED", "G-HERE", "G-THERE");
        assertThat(more.typed("note")).isEqualTo("from the drawer");
    }

    @Test
    void saysNothingOfOtherSitesWhereThereIsOne() {
        database.wipe();
        Plant plant = Plant.in(context);
        var only = plant.site();
        plant.compressor(only);
        plant.gauge("G-1", only, true);

        assertThat(SentForm.get(site, "/compressors/1/tests/new").page().select("button[value=anywhere]"))
                .isEmpty();
        assertThat(SentForm.get(site, "/guided/1").page().select("a[href*=anywhere]"))
                .isEmpty();
    }
}

@OnH2
final class InstrumentsAtHandOnH2Tests extends InstrumentsAtHandTests {}

@OnPostgres
final class InstrumentsAtHandOnPostgresTests extends InstrumentsAtHandTests {}
