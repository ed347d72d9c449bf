package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plantair.testing.DemandForms;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

/**
 * A second compressor was bought for a blast room. Nozzles by the table of the blasting trade (see BlastNozzle): 5/16 in at
 * 100 psi takes 137 cfm, 1/4 in 81 cfm, and wears to the former. 91 + 62 − 12 = 141 cfm.
 */
abstract class BlastRoomStoryTests extends Story {

    @BeforeEach
    void twoMachines() {
        register(BlastRoom.forms().toArray(SentForm[]::new));
    }

    private SentForm.Answer page() {
        return SentForm.get(site, "/sites/1/supply");
    }

    private static String row(SentForm.Answer page, String question) {
        return page.page()
                .select("#questions tr[data-question=" + question + "]")
                .text();
    }

    private static double cell(SentForm.Answer page, String question, int column) {
        String text = page.page()
                .select("#questions tr[data-question=" + question + "] td:nth-of-type(" + column + ")")
                .text();
        return Double.parseDouble(text.replaceAll(" .*", ""));
    }

    @Test
    void saysThatTheWideNozzleNeedsMore() {
        register(DemandForms.NOZZLE);

        var page = page();

        assertThat(row(page, "bare")).contains("▲ cannot be told", "3 %").contains("It could be told");
        assertThat(cell(page, "bare", 2)).isCloseTo(141, within(0.8));
        assertThat(cell(page, "bare", 3)).isCloseTo(137, within(0.5));
        assertThat(row(page, "reserve")).contains("■ not enough");
        assertThat(cell(page, "reserve", 3)).isCloseTo(206, within(1.0));
        assertThat(page.page().select(".lead").text()).isEqualTo("■ not enough");
    }

    @Test
    void saysThatTheNarrowNozzleHasEnoughUntilItWears() {
        register(DemandForms.NOZZLE.with("air.nozzle", "NO_4"));

        var page = page();

        assertThat(row(page, "reserve")).contains("● enough");
        assertThat(cell(page, "reserve", 3)).isCloseTo(122, within(0.6));
        assertThat(row(page, "worn")).contains("■ not enough");
        assertThat(page.text()).contains("A worn nozzle takes as much as the next bore: 81.0 becomes 137 cfm.");
    }

    @Test
    void saysThatNobodyBlastsWithoutTheLargerMachine() {
        register(DemandForms.NOZZLE.with("air.nozzle", "NO_4"));

        var page = page();

        assertThat(row(page, "loss")).contains("while A stands", "■ not enough");
        assertThat(cell(page, "loss", 2)).isCloseTo(50, within(0.5));
        assertThat(page.page().select("#notes").text())
                .containsPattern(
                        "Without A only 50\\.\\d ± \\d\\.\\d cfm are left\\. That cannot keep running.*Blast room");
    }

    @Test
    void remindsOfWhatTwoMachinesOnOneHeaderNeed() {
        register(DemandForms.NOZZLE);

        assertThat(page().text()).contains("check valve", "Stagger the pressure bands", "in parallel");
    }

    @Test
    void answersWhatIfWithoutStoringAnything() {
        register(DemandForms.NOZZLE.with("air.nozzle", "NO_4"));

        var supposed = SentForm.get(
                site,
                "/sites/1/supply?kind=BLAST_NOZZLE&pieces=1&air.nozzle=NO_4&air.pressure.number=100"
                        + "&air.pressure.unit=[psi]&out=2");

        assertThat(supposed.status()).isEqualTo(200);
        assertThat(supposed.text()).contains("This is supposed, not so.", "B: taken out for this question.");
        assertThat(cell(supposed, "reserve", 3)).isCloseTo(243, within(1.0));
        assertThat(row(page(), "reserve")).contains("● enough");
    }
}

@OnH2
final class BlastRoomOnH2StoryTests extends BlastRoomStoryTests {}

@OnPostgres
final class BlastRoomOnPostgresStoryTests extends BlastRoomStoryTests {}
