package plantair.testrecord.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.maintenance.EventKind;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.SentForm;
import plantair.testrecord.BaselineChoice;
import plantair.testrecord.ChooseBaseline;

/** The form that makes another test the baseline. */
abstract class BaselineFormTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private ChooseBaseline choose;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void startWithTwoTests() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
        plant.test(compressor, "2025-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.test(compressor, "2026-01-05T14:00:00Z", "70.2", "70.8", "70.5");
    }

    private static SentForm form() {
        return SentForm.to("/compressors/1/baseline")
                .with("submission", UUID.randomUUID().toString())
                .with("test", "2")
                .with("event", "")
                .with("edit.reason", "New airend");
    }

    @Test
    void offersTheTestsThatJoinTheTrendNewestFirst() {
        plant.plan(compressor).on("2026-02-05T14:00:00Z").anotherMachineOn().record();

        var page = SentForm.get(site, "/compressors/1/baseline?test=1").page();

        assertThat(page.select("#test option").eachAttr("value")).containsExactly("", "2", "1");
        assertThat(page.select("#test option[selected]").text()).startsWith("2025-01-05, ");
        assertThat(page.select("main strong").text()).endsWith("(1)");
    }

    @Test
    void keepsTheChoiceWithWhoWhenAndWhy() {
        plant.event(compressor, LocalDate.of(2025, 6, 1), EventKind.AIREND, true, "");

        var answer = form().with("event", "1").post(site);

        assertThat(answer.redirect()).isEqualTo("/compressors/1");
        BaselineChoice choice = choose.of(1).get(0);
        assertThat(choice.testId()).isEqualTo(2);
        assertThat(choice.eventId()).isEqualTo(1);
        assertThat(choice.chosenBy()).isEqualTo("Ann (ann)");
        assertThat(choice.reason()).isEqualTo("New airend");
        assertThat(SentForm.get(site, "/changes").text())
                .contains("Baseline of C-1", "test 1 of 2025-01-05", "test 2 of 2026-01-05", "New airend");
    }

    @Test
    void keepsEarlierChoices() {
        form().post(site);
        form().with("test", "1").with("edit.reason", "The second one was wet").post(site);

        assertThat(choose.of(1)).extracting(BaselineChoice::testId).containsExactly(2L, 1L);
    }

    @Test
    void takesAFormSentTwiceOnce() {
        SentForm twice = form();

        assertThat(twice.post(site).redirect()).isEqualTo("/compressors/1");
        assertThat(twice.post(site).redirect()).isEqualTo("/compressors/1");

        assertThat(choose.of(1)).hasSize(1);
    }

    @Test
    void refusesAChoiceWithoutReason() {
        var answer = form().with("edit.reason", " ").post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error("edit.reason")).isNotEmpty();
        assertThat(answer.typed("test")).isEqualTo("2");
        assertThat(choose.of(1)).isEmpty();
    }

    @Test
    void refusesATestThatIsNoneOfTheMachines() {
        Compressor other = plant.compressor(compressor.site(), "C-2");
        plant.test(other, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.plan(compressor).on("2026-02-05T14:00:00Z").anotherMachineOn().record();

        for (String wrong : List.of("", "3", "4", "99", "x", "-1")) {
            var answer = form().with("test", wrong).post(site);

            assertThat(answer.status()).as(wrong).isEqualTo(422);
            assertThat(answer.error("test")).as(wrong).isNotEmpty();
        }
        assertThat(choose.of(1)).isEmpty();
    }

    @Test
    void refusesOddTextsWithoutFailing() {
        List<String> odd = new ArrayList<>(List.of("'; drop table x; --", "\u0000", "🙂", "1e3", "x".repeat(2_000)));
        for (String text : odd) {
            assertThat(form().with("event", text).post(site).status()).isEqualTo(422);
            assertThat(form().with("submission", text).post(site).status()).isEqualTo(422);
        }
        assertThat(form().with("event", "7").post(site).error("event")).isNotEmpty();
        assertThat(form().with("edit.reason", "x".repeat(1_001)).post(site).status())
                .isEqualTo(422);
    }

    @Test
    void answersAMachineThatIsNotThere() {
        assertThat(SentForm.get(site, "/compressors/9/baseline").status()).isEqualTo(404);
        assertThat(form().at("/compressors/9/baseline").post(site).status()).isEqualTo(404);
    }

    @Test
    void saysThatThereIsNothingToChoose() {
        plant.compressor(compressor.site(), "C-2");

        var answer = SentForm.get(site, "/compressors/2/baseline");

        assertThat(answer.text()).contains("nothing to choose");
        assertThat(answer.page().select("main form")).isEmpty();
    }
}

@OnH2
final class BaselineFormOnH2Tests extends BaselineFormTests {}

@OnPostgres
final class BaselineFormOnPostgresTests extends BaselineFormTests {}
