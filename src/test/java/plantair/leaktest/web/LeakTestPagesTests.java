package plantair.leaktest.web;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.LeakForms.loadTimes;
import static plantair.testing.LeakForms.pastedFall;
import static plantair.testing.LeakForms.twoReadings;

import jakarta.servlet.http.Cookie;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** The pages of leak tests. It is 2026-06-15, noon UTC; the site has one machine, one receiver and one pipe. */
abstract class LeakTestPagesTests {

    private static final List<String> ODD =
            List.of("", " ", "x", "-1", "1e400", "2026-02-30", "9999-12-31", "\u0000", "ü".repeat(5_000), "0", "1,5");

    private static final String[] NIGHT = {"90 410", "88 412", "92 408", "91 409", "89 411"};

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void startWithAPlant() {
        database.wipe();
        for (SentForm form : List.of(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER, PlantForms.PIPE)) {
            assertThat(form.post(site).status()).isEqualTo(302);
        }
    }

    private SentForm.Answer record(SentForm form) {
        var answer = form.post(site, People.of(Role.TECHNICIAN));
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
        return SentForm.get(site, answer.redirect());
    }

    private static SentForm anew(SentForm form) {
        return form.with("submission", UUID.randomUUID().toString());
    }

    /** Bureau of Energy Efficiency (India), from memory: 1.5 min loaded, 10.5 unloaded, 35 m³/min: 12.5 %, 4.375 m³/min. */
    @Test
    void agreesWithAnEnergyAuditGuide() {
        var form = loadTimes("90 630")
                .with("machines[0].capacity", "35", "m3/min")
                .with("machines[0].capacityAt", "7", "bar")
                .with("atPressure", "7", "bar");

        var answer = form.post(site);
        var page = SentForm.get(site, answer.redirect(), new Cookie("units", "BAR_CUBIC"));

        assertThat(page.text())
                .contains("12.5 ± 2.5 %", "4.38 ± 0.88 m³/min", "at a working pressure of 7.00 bar(g)")
                .contains("Leak = f × capacity = 0.12500 × 35.0000 m³/min");
    }

    /** Formula of the US Department of Energy's guide (from memory); the example is own: 100 · 50/(5 · 14.7) · 1.25 = 85.0. */
    @Test
    void offersTheFactorOfTheGuideByName() {
        var page = record(twoReadings());

        assertThat(page.text())
                .contains(
                        "Mean loss 68.0 ± 1.5 cfm",
                        "As the guide of the US Department of Energy reckons 85.0 ± 1.9 cfm")
                .contains("The exact factor for this fall, absolute pressures, is 1.31")
                .contains("× 1.25 as the guide of the US Department of Energy: 85.0 ± 1.9 cfm at 100.0 psig");
        assertThat(page.page().select("dl.result strong").text()).startsWith("89.");
    }

    @Test
    void doesNotOfferTheFactorForASmallFall() {
        var page = record(twoReadings().with("last", "80", "[psi]"));

        assertThat(page.text())
                .contains("reckons does not apply", "so it is not offered here")
                .doesNotContain("× 1.25 as the guide");
    }

    /** Own simulation, fitted apart with numpy: 38.420 L/min at 8 bar, u(k)/k 4.68 %; k = 1.439703e-4 1/s. */
    @Test
    void agreesWithAFitMadeApart() throws IOException {
        String lines = Files.readAllLines(Path.of("src/test/resources/reference/leak/pressure_fall.csv")).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("t_s"))
                .collect(Collectors.joining("\n"));

        var answer = pastedFall(lines).post(site);
        var page = SentForm.get(site, answer.redirect(), new Cookie("units", "BAR_LITRE"));

        // 38.42 L/min is 0.6403 L/s; half a kelvin of cooling in 300 s is 5.69e-6 1/s beside u(k) 6.74e-6: 6.2 % with 1
        // % of V
        assertThat(page.text()).contains("0.640 ± 0.040 L/s", "8.00 bar(g)", "0.864 ± 0.053 % of the air a minute");
        assertThat(page.page().select("#readings ~ .scroll tbody tr")).hasSize(11);
    }

    @Test
    void countsTimeStandingWithTimeUnloaded() {
        var unloaded = record(loadTimes(NIGHT));
        var split = record(loadTimes("90 110 300", "88 112 300", "92 108 300", "91 109 300", "89 111 300"));

        assertThat(split.page().select("dl.result strong").text())
                .isEqualTo(unloaded.page().select("dl.result strong").text());
        assertThat(split.text())
                .contains("Standing still is not loading: the 1500.0 s off")
                .contains("Lumped with the loaded time, the same night would read 78.0 %.");
        assertThat(unloaded.text()).doesNotContain("Standing still is not loading");
    }

    @Test
    void saysWhatATypedCapacityAndFewCyclesAreWorth() {
        var page = record(loadTimes("90 410", "88 412").with("usersOff", "true").with("drainsOff", ""));

        assertThat(page.text())
                .contains("2 cycles tell little: five or more")
                .contains("the leak is as wrong as that figure")
                .contains("Drains or the purge of a dryer were on")
                .contains("▲ in between")
                .doesNotContain("??");
    }

    @Test
    void asksWhetherUsersWereOff() {
        SentForm form = loadTimes(NIGHT).with("usersOff", "");

        var asked = form.post(site);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.warning("usersOff")).contains("Not all users are ticked as off");
        assertThat(record(form.with("confirmed", asked.token())).text()).contains("Not all users were off");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            loads | cycles[0].loaded.number       | x         | cycles0.loaded      | number
            loads | cycles[0].loaded.number       | 0         | cycles0.loaded      | more than zero
            loads | cycles[0].loaded.number       | 86401     | cycles0.loaded      | half a second to a day
            loads | cycles[0].unloaded.number     | ``        | cycles0.unloaded    | How long was it unloaded
            loads | cycles[0].unloaded.number     | 0         | cycles0.unloaded    | always loaded
            loads | cycles[0].unloaded.number     | -5        | cycles0.unloaded    | half a second to a day
            loads | machines[0].capacity.number   | ``        | machines0.capacity  | Type the capacity of C-1
            loads | machines[0].capacityAt.number | 160       | machines0.capacity  | known too far from 100 psi
            loads | machines[0].percent.number    | 120       | machines0.percent   | 100
            loads | machines[0].ran               | ``        | ``                  | Tick the compressor that ran
            loads | place                         | TEST_VOLUME | place             | For the test volume of a machine
            loads | date                          | 2026-06-16 | date               | future
            loads | atPressure.number             | ``        | atPressure          | Type the number
            two   | last.number                   | x         | last                | number
            two   | waited.number                 | 0         | waited              | more than zero
            two   | waited.number                 | 1441      | waited              | half a second to a day
            two   | volume.number                 | ``        | receivers           | Choose the receivers
            two   | volumePercent.number          | ``        | volumePercent       | Type the number
            two   | receivers                     | 1         | receivers           | not both
            two   | receivers                     | 99        | receivers           | not in the register
            two   | atPressure.number             | 12        | atPressure          | not choked
            two   | division.number               | 0         | division            | more than zero
            two   | compressor                    | 7         | compressor          | ``
            fall  | pasted                        | 0 8       | pasted              | too few for a line
            fall  | pastedTime                    | bar       | pastedTime          | not a unit
            fall  | readings[0].at.number         | 5         | readings0.pressure  | Type the number""")
    void keepsWhatWasTyped(String kind, String field, String typed, String beside, String message) {
        SentForm sound = switch (kind) {
            case "loads" -> loadTimes(NIGHT);
            case "two" -> twoReadings();
            default -> pastedFall("0 8.02\n60 7.9\n120 7.8\n180 7.7");
        };
        boolean isIgnored = message.isEmpty();

        var answer = sound.with("note", "kept").with(field, typed).post(site);

        assertThat(answer.status()).as(answer.text()).isEqualTo(isIgnored ? 302 : 422);
        if (!isIgnored) {
            assertThat(beside.isEmpty() ? answer.text() : answer.error(beside)).contains(message);
            assertThat(answer.typed("note")).isEqualTo("kept");
            assertThat(answer.page().html()).doesNotContain("??");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            0 8/30 7.9/60 x/90 7.7        | Line 3, “60 x”
            0 8/30 7.9/20 7.8/90 7.7      | Reading 3: its time, 20 s, is not after that of the one before, 30 s
            0 8/30 7.9/30 7.8/90 7.7      | Reading 3: its time
            0 8/30 7,9/60 7.8/90 7.7      | Line 2, “30 7,9”
            time bar/0 8/30 7.9/60 7.8    | Line 1, “time bar”
            0 8/30 7.9/60 7.8/90000 7.7   | Line 4
            0 8/30 7.9/60 7.8/90 -3       | Line 4""")
    void refusesLinesThatCannotBeRead(String lines, String message) {
        var answer = pastedFall(lines.replace('/', '\n')).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error("pasted")).contains(message);
        assertThat(answer.typed("pasted")).isEqualTo(lines.replace('/', '\n'));
    }

    @Test
    void takesFiveHundredLinesAndNoMore() {
        String lines =
                IntStream.range(0, 500).mapToObj(i -> i + " 7." + (999 - i)).collect(Collectors.joining("\n"));

        assertThat(record(pastedFall(lines)).page().select("#readings ~ .scroll tbody tr"))
                .hasSize(500);
        var answer = pastedFall(lines + "\n500 7.4").post(site);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error("pasted")).isEqualTo("501 lines are too many: up to 500 are taken.");

        var correction = SentForm.get(site, "/leak-tests/1/correct");
        assertThat(correction.typed("pasted").lines()).hasSize(500);
    }

    @Test
    void findsAirThatStillCoolsAndOneThatIsTight() {
        String cooling = IntStream.rangeClosed(0, 20)
                .mapToObj(i -> 30 * i + " " + String.format("%.4f", 7.5 + 0.5 * Math.exp(-i / 5.0)))
                .collect(Collectors.joining("\n"));
        String tight = "0 8.00\n300 8.00\n600 8.00\n900 8.00\n1200 7.99";

        assertThat(record(pastedFall(cooling)).text()).contains("the air was still cooling");
        assertThat(record(pastedFall(tight)).text()).contains("tight, as far as this test can see");
    }

    @Test
    void asksAboutAPressureThatRose() {
        SentForm form = twoReadings().with("last", "105", "[psi]");

        var asked = form.post(site);

        assertThat(asked.warning("last")).contains("105 psi, is above the first, 100 psi");
        assertThat(record(form.with("confirmed", asked.token())).text()).contains("something feeds in. Find it first");
    }

    @Test
    void correctsAndWithdrawsWithAReason() {
        record(loadTimes(NIGHT));
        SentForm better = anew(loadTimes("90 400", "88 412")).at("/leak-tests/1/correct");

        assertThat(better.with("edit.reason", "").post(site).error("edit.reason"))
                .isNotEmpty();
        var corrected = better.with("edit.reason", "a slip").post(site, People.of(Role.MANAGER));
        assertThat(corrected.redirect()).isEqualTo("/leak-tests/2");
        assertThat(SentForm.get(site, "/leak-tests/1").text()).contains("Superseded by leak test 2: a slip.");
        assertThat(SentForm.get(site, "/leak-tests/1/correct").redirect()).isEqualTo("/leak-tests/2");
        var twice = anew(better).with("edit.reason", "another").post(site);
        assertThat(twice.status()).isEqualTo(409);

        var withdrawn = anew(better)
                .at("/leak-tests/2/correct")
                .with("edit.reason", "somebody used air")
                .with("withdrawn", "true")
                .post(site);
        assertThat(SentForm.get(site, withdrawn.redirect()).text())
                .contains("Says that leak test 2 does not count: somebody used air.");
        assertThat(SentForm.get(site, "/sites/1/leak-tests").text()).contains("does not count");
        assertThat(SentForm.get(site, "/sites/1/leaks").text()).contains("Newest leak test of the whole system none");
    }

    @Test
    void recordsAFormSentTwiceOnce() {
        SentForm form = loadTimes(NIGHT);

        assertThat(form.post(site).redirect()).isEqualTo("/leak-tests/1");
        assertThat(form.post(site).redirect()).isEqualTo("/leak-tests/1");
    }

    @Test
    void listsNewestFirstInPages() {
        for (int day = 10; day < 15; day++) {
            record(loadTimes(NIGHT).with("date", "2026-06-" + day));
        }

        var page = SentForm.get(site, "/sites/1/leak-tests");

        assertThat(page.page().select("tbody th").eachText())
                .startsWith("2026-06-14 22:10", "2026-06-13 22:10")
                .hasSize(5);
        assertThat(page.text()).contains("18.00 ± 0.14 % · 37.8 ± 1.2 cfm at 100.0 psig", "▲ in between");
        assertThat(SentForm.get(site, "/sites/1/leak-tests?page=2").status()).isEqualTo(404);
    }

    @Test
    void offersMoreRows() {
        var more = loadTimes(NIGHT).with("more", "rows").post(site);

        assertThat(more.status()).isEqualTo(200);
        assertThat(more.page().select("fieldset.run")).hasSize(10);
        assertThat(more.typed("cycles[4].loaded.number")).isEqualTo("89");
        assertThat(pastedFall("").with("more", "rows").post(site).page().select("fieldset.run"))
                .hasSize(6);
    }

    @Test
    void letsTechniciansRecordAndManagersCorrect() {
        SentForm form = loadTimes(NIGHT);

        assertThat(form.post(site, People.of(Role.AUDITOR)).status()).isEqualTo(403);
        assertThat(form.post(site, People.of(Role.TECHNICIAN)).status()).isEqualTo(302);
        SentForm correction = anew(form).at("/leak-tests/1/correct").with("edit.reason", "x");
        assertThat(correction.post(site, People.of(Role.TECHNICIAN)).status()).isEqualTo(403);
        var read = SentForm.get(site, "/leak-tests/1", People.of(Role.AUDITOR));
        assertThat(read.status()).isEqualTo(200);
        assertThat(read.text()).doesNotContain("Correct or withdraw");
        assertThat(SentForm.get(site, "/sites/1/leak-tests", People.of(Role.AUDITOR))
                        .text())
                .doesNotContain("By load times By");
    }

    @ParameterizedTest
    @CsvSource({"LOAD_TIMES", "TWO_READINGS", "FALL"})
    void showsAFormOfEachKind(String kind) {
        var page = SentForm.get(site, "/sites/1/leak-tests/new?kind=" + kind);

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().html()).doesNotContain("??");
        assertThat(SentForm.get(site, "/sites/1/leak-tests/new?kind=SPOON").status())
                .isEqualTo(400);
    }

    @Test
    void survivesOddValuesInEveryField() {
        record(loadTimes(NIGHT));
        List<Integer> answers = new ArrayList<>();
        for (SentForm sound : List.of(
                loadTimes("90 410 5"),
                twoReadings(),
                pastedFall("0 8\n30 7.9\n60 7.8\n90 7.7"),
                loadTimes("90 400").at("/leak-tests/1/correct").with("edit.reason", "x"))) {
            for (String field : sound.fields().keySet()) {
                for (String odd : ODD) {
                    int status = anew(sound).with(field, odd).post(site).status();

                    assertThat(status)
                            .as("%s: %s=%s", sound.address(), field, odd)
                            .isIn(302, 409, 422);
                    answers.add(status);
                }
            }
        }
        assertThat(answers).contains(302, 422);
        assertThat(SentForm.get(site, "/sites/1/leak-tests").status()).isEqualTo(200);
        assertThat(SentForm.get(site, "/sites/1/leaks").status()).isEqualTo(200);
        assertThat(SentForm.get(site, "/changes").status()).isEqualTo(200);
    }
}

@OnH2
final class LeakTestPagesOnH2Tests extends LeakTestPagesTests {}

@OnPostgres
final class LeakTestPagesOnPostgresTests extends LeakTestPagesTests {}
