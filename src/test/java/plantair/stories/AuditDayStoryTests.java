package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.air;
import static plantair.testing.PlantForms.band;
import static plantair.testing.PlantForms.certificate;
import static plantair.testing.PlantForms.pumpUp;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import plantair.account.Role;
import plantair.account.SignedIn;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.testing.AuditRecipe;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.SentForm;

/** An auditor looks at the test whose gauge came back bad: reads all of it, changes nothing, checks it at home. */
abstract class AuditDayStoryTests extends Story {

    private static final SignedIn AUDITOR = People.of(Role.AUDITOR);
    private static final String NOTE = "=HYPERLINK(\"x\") Größe geprüft, café";
    private static final String SOUND = "each record is as its newest change left it";

    @TempDir
    private Path folder;

    @Autowired
    private Database database;

    @BeforeEach
    void yearsOfRecords() {
        database.recordPeople();
        register(
                SITE,
                COMPRESSOR.with("ratings[0].flow.number", "34"),
                RECEIVER,
                PIPE,
                GAUGE,
                certificate("K-1", "2025-01-10"),
                tested("2025-02-03", "80.0").with("tester", "Zoë Núñez").with("notes", NOTE),
                tested("2025-06-02", "78.0"));
        sign(review(1));
        register(
                tested("2025-06-03", "78.0").at("/tests/2/supersede").with("reason", "typed under the wrong day"),
                certificate("K-2", "2026-01-08")
                        .with("points[0].reading", "135", "[psi]")
                        .with("points[0].error", "0", "[psi]")
                        .with("points[1].reading", "175", "[psi]")
                        .with("points[1].error", "4", "[psi]"),
                SentForm.to("/calibrations/2/impact").with("note", "Belt left on because of these."));
    }

    private static SentForm tested(String date, String seconds) {
        SentForm form = band(pumpUp(date, seconds, seconds, seconds), "135.0", "175.0", "[psi]");
        return air(form, "75", "[degF]").with("barometer", "14.6", "[psi]").with("gauge", "1");
    }

    private static SentForm review(long test) {
        return SentForm.to("/tests/" + test + "/review")
                .with("submission", UUID.randomUUID().toString())
                .with("note", "gauge looked at");
    }

    private void sign(SentForm form) {
        assertThat(form.post(site, People.of(Role.MANAGER)).status()).isEqualTo(302);
    }

    private SentForm.Answer page(String address) {
        SentForm.Answer answer = SentForm.get(site, address, AUDITOR);
        assertThat(answer.status()).as(address).isEqualTo(200);
        return answer;
    }

    @Test
    void showsOnOnePageWhoDidWhatByWhichMeansAndWhy() {
        assertThat(page("/tests/1").text())
                .contains("Zoë Núñez", "Ann (ann)")
                .contains("G-1", "K-2", "PU-1")
                .contains("Reviewed by Bo (bo)", "gauge looked at")
                .contains("135.0 psi", "175.0 psi", NOTE);
        assertThat(page("/tests/3").text()).contains("typed under the wrong day");
        assertThat(page("/changes?kind=RESTATEMENT").text()).contains("Belt left on because of these.", "Ann (ann)");
    }

    @Test
    void offersAndTakesNoChange() {
        assertThat(page("/tests/1").page().select("main form[method=post]")).isEmpty();
        for (SentForm change : List.of(
                SITE,
                COMPRESSOR.at("/compressors/1"),
                tested("2026-02-02", "80.0"),
                tested("2026-02-02", "80.0").at("/tests/1/supersede"),
                review(3),
                SentForm.to("/calibrations/2/impact").with("note", "x"),
                SentForm.to("/accounts"),
                SentForm.to("/import"))) {
            assertThat(change.post(site, AUDITOR).status()).as(change.address()).isEqualTo(403);
        }
    }

    /** The hand figure from raw columns: volume × rise over barometer and time, 16.32 ft³ × 40 / 14.6 / 80 s = 33.5 cfm. */
    @Test
    void exportsWhatASpreadsheetCanReadAndRecompute() {
        CSVRecord row = csv().get(0);

        assertThat(row.get("tester")).isEqualTo("Zoë Núñez");
        assertThat(row.get("notes")).isEqualTo("'" + NOTE);
        assertThat(row.get("start_pressure_unit")).isEqualTo("[psi]");
        double pascals = number(row, "stop_pressure_pa") - number(row, "start_pressure_pa");
        double flow =
                number(row, "net_volume_m3") * pascals / number(row, "station_pressure_pa") / number(row, "elapsed_s");
        assertThat(new FlowRate(flow).in(FlowUnit.CFM)).isCloseTo(33.54, NEAR);
        assertThat(page("/export/tests.csv").response().getContentAsByteArray())
                .as("a byte order mark, so that a spreadsheet takes it for UTF-8")
                .startsWith(0xEF, 0xBB, 0xBF);
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @Test
    void checksTheFileAtHomeAndFindsOneAlteredByte() throws IOException, InterruptedException {
        AuditRecipe.unpack(page("/audit/file.zip").response().getContentAsByteArray(), folder);
        assertThat(AuditRecipe.follow(folder)).contains(SOUND).doesNotContain("FAULT");

        Path records = folder.resolve("records.txt");
        String text = Files.readString(records);
        int line = (int) text.substring(0, text.indexOf("Zoë")).lines().count();
        Files.writeString(records, text.replaceFirst("Zoë", "Zoe"));

        assertThat(AuditRecipe.follow(folder))
                .contains("FAULT records.txt: line " + line + " is not as it was written")
                .doesNotContain("line " + (line + 1) + " is not");
    }
}

@OnH2
final class AuditDayOnH2StoryTests extends AuditDayStoryTests {}

@OnPostgres
final class AuditDayOnPostgresStoryTests extends AuditDayStoryTests {}
