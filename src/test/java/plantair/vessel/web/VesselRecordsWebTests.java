package plantair.vessel.web;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.VesselForms.CERTIFICATE;
import static plantair.testing.VesselForms.VALVE;
import static plantair.testing.VesselForms.damage;
import static plantair.testing.VesselForms.thickness;
import static plantair.testing.VesselForms.valveTest;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
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

/** The forms of the safety records of a receiver. It is 2026-06-15, noon UTC. */
abstract class VesselRecordsWebTests {

    private static final List<String> ODD =
            List.of("", " ", "x", "-1", "1e400", "2026-02-30", "9999-12-31", "\u0000", "ü".repeat(5_000), "0", "1,5");

    private static final SentForm CLEAR = SentForm.to("/findings/1/clear")
            .with("foundOn", "2026-06-11")
            .with("note", "dent from a forklift, B. Ray looked");

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void startWithAReceiver() {
        database.wipe();
        send(PlantForms.SITE, PlantForms.RECEIVER);
    }

    private void send(SentForm... forms) {
        for (SentForm form : forms) {
            var answer = form.post(site);
            assertThat(answer.status()).as(answer.text()).isEqualTo(302);
            assertThat(answer.redirect()).isIn("/receivers/1", "/sites/1");
        }
    }

    private static SentForm anew(SentForm form) {
        return form.with("submission", UUID.randomUUID().toString());
    }

    @Test
    void showsWhatWasRegistered() {
        send(VALVE, CERTIFICATE, valveTest("2026-01-10").with("poppedAt", "181", "[psi]"));

        var page = SentForm.get(site, "/receivers/1");
        assertThat(page.text())
                .contains("RV-1", "180 psi", "200 cfm", "UV", "2026-01-10 ● passed lever lifted in place 181 psi Ann")
                .contains("P-1207 ● in force 2029-05-10 200 psi State boiler office")
                .contains("counts no more: the valves registered below do")
                .doesNotContain("??");
        assertThat(SentForm.get(site, "/valves/1").redirect()).isEqualTo("/receivers/1");
        assertThat(SentForm.get(site, "/certificates/1").redirect()).isEqualTo("/receivers/1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            valve       | setPressure.number | ``         | setPressure | Type the number
            valve       | setPressure.number | -5         | setPressure | more than zero
            valve       | setPressure.unit   | [in_i]     | setPressure | not a unit of this reading
            valve       | tag                | ``         | tag         | Type something
            valve       | installedOn        | 2026-06-16 | installedOn | still to come
            certificate | issuedOn           | ``         | issuedOn    | date
            certificate | validTo            | 2024-05-09 | validTo     | before the day of issue
            certificate | issuedBy           | ``         | issuedBy    | Type something
            test        | doneOn             | 1949-12-31 | doneOn      | before 1950
            test        | method             | SPOON      | method      | not
            test        | passed             | ``         | passed      | Choose one
            test        | submission         | x          | submission  | ``
            look        | inspector          | ``         | inspector   | Type something
            look        | nextDue            | 2026-01-10 | nextDue     | not after the inspection
            look        | nextDue            | 2126-01-10 | nextDue     | 50 years
            look        | accuracy.number    | 0          | accuracy    | more than zero
            look        | readings[0].place  | ``         | readings0.place | Type something
            look        | readings[0].part   | ``         | readings0.part  | Choose one
            look        | readings[0].thickness.number | 0,23 | readings0.thickness | 0.23
            look        | readings[0].thickness.number | ``   | kind        | needs a reading
            damage      | kind               | ``         | kind        | Choose one
            damage      | foundOn            | 2026-06-16 | foundOn     | still to come""")
    void keepsWhatWasTyped(String form, String field, String typed, String beside, String message) {
        send(VALVE);
        SentForm sound = switch (form) {
            case "valve" -> VALVE.with("tag", "RV-2").with("note", "kept");
            case "certificate" -> CERTIFICATE.with("note", "kept");
            case "test" -> valveTest("2026-01-10").with("note", "kept");
            case "look" -> thickness("2026-01-10", "0.240").with("findings", "kept");
            default -> damage("BULGE").with("note", "kept");
        };

        var answer = sound.with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        if (!message.isEmpty()) {
            assertThat(answer.error(beside)).contains(message);
        }
        assertThat(answer.typed(form.equals("look") ? "findings" : "note")).isEqualTo("kept");
        assertThat(SentForm.get(site, "/receivers/1").text()).doesNotContain("kept");
    }

    @Test
    void asksAboutWhatIsOdd() {
        var high = VALVE.with("setPressure", "14", "bar");
        assertThat(high.post(site).warning("setPressure")).contains("14 bar", "MAWP of 200 psi");
        send(high.with("confirmed", high.post(site).token()));
        assertThat(valveTest("2026-01-10")
                        .with("poppedAt", "230", "[psi]")
                        .post(site)
                        .warning("poppedAt"))
                .contains("more than 10 % apart");
        assertThat(CERTIFICATE.with("permitted", "210", "[psi]").post(site).warning("permitted"))
                .contains("read wrong");
        assertThat(CERTIFICATE.with("validTo", "2026-06-14").post(site).warning("validTo"))
                .contains("past");
        assertThat(thickness("2026-01-10", "24").post(site).warning("readings0.thickness"))
                .contains("unusual wall");
        assertThat(thickness("2026-01-10", "0.24")
                        .with("reducedMawp", "210", "[psi]")
                        .post(site)
                        .warning("reducedMawp"))
                .contains("more than the plate allows");
    }

    @Test
    void refusesTheSameNameTwice() {
        send(VALVE, CERTIFICATE);

        assertThat(VALVE.with("tag", "rv-1").post(site).error("tag")).contains("has this name already");
        assertThat(CERTIFICATE.with("number", "p-1207").post(site).error("number"))
                .contains("has this name already");
        assertThat(thickness("2026-01-10", "0.24")
                        .with("readings[1].place", "Bottom, drain end")
                        .with("readings[1].part", "SHELL")
                        .with("readings[1].thickness", "0.23", "[in_i]")
                        .post(site)
                        .error("readings1.place"))
                .contains("stands above already");
    }

    @Test
    void changesAValveOnceAVersionWithAReason() {
        send(VALVE);
        var change = VALVE.at("/valves/1").with("setPressure", "175", "[psi]").with("edit.version", "0");

        assertThat(change.post(site).error("edit.reason")).contains("Type something");
        send(change.with("edit.reason", "tag read again"));
        assertThat(change.with("edit.reason", "again").post(site).status()).isEqualTo(409);
        assertThat(SentForm.get(site, "/valves/1/edit").typed("setPressure.number"))
                .isEqualTo("175");
        assertThat(SentForm.get(site, "/changes").text())
                .contains("Relief valve RV-1", "set pressure: 180 psi set pressure: 175 psi", "tag read again");
        send(CERTIFICATE);
        send(CERTIFICATE
                .at("/certificates/1")
                .with("inForce", "")
                .with("edit.version", "0")
                .with("edit.reason", "new one"));
        assertThat(SentForm.get(site, "/receivers/1").text()).contains("P-1207 ○ no longer in force");
    }

    @Test
    void recordsAFormSentTwiceOnce() {
        send(VALVE);
        SentForm test = valveTest("2026-01-10");
        SentForm look = thickness("2026-01-10", "0.240");
        SentForm damage = damage("BULGE");

        send(test, test, look, look, damage, damage);

        var page = SentForm.get(site, "/receivers/1").page();
        assertThat(page.select("#valves tbody tr")).hasSize(1);
        assertThat(page.select("#inspections tbody tr")).hasSize(1);
        assertThat(page.select("#damage tbody tr")).hasSize(1);
    }

    @Test
    void correctsATestAndAnInspectionByOthers() {
        send(VALVE, valveTest("2026-01-10"), thickness("2026-01-11", "0.240"));
        SentForm test = anew(valveTest("2026-01-12").at("/valve-tests/1/correct"));
        SentForm look = anew(thickness("2026-01-13", "0.241").at("/inspections/1/correct"));

        assertThat(SentForm.get(site, "/valve-tests/1/correct").typed("doneOn")).isEqualTo("2026-01-10");
        assertThat(SentForm.get(site, "/inspections/1/correct").typed("readings[0].thickness.number"))
                .isEqualTo("0.240");
        assertThat(test.post(site).error("edit.reason")).contains("Type something");
        send(test.with("edit.reason", "slip"), look.with("edit.reason", "read again"));

        var page = SentForm.get(site, "/receivers/1");
        assertThat(page.page().select("tr.superseded")).hasSize(2);
        assertThat(page.text()).contains("In place of entry 1: slip", "In place of entry 1: read again");
        assertThat(page.page().select("#wall tbody tr").text()).contains("0.241 in");
        assertThat(anew(test).with("edit.reason", "late").post(site).status()).isEqualTo(409);
        assertThat(anew(look).with("edit.reason", "late").post(site).status()).isEqualTo(409);
        assertThat(SentForm.get(site, "/valve-tests/1/correct").redirect()).isEqualTo("/receivers/1");
        assertThat(SentForm.get(site, "/inspections/1/correct").redirect()).isEqualTo("/receivers/1");
    }

    @Test
    void offersThePlacesOfTheLastInspectionAndMoreRows() {
        send(thickness("2026-01-11", "0.240"));

        var form = SentForm.get(site, "/receivers/1/inspections/new");
        assertThat(form.typed("readings[0].place")).isEqualTo("bottom, drain end");
        assertThat(form.typed("readings[0].thickness.number")).isEmpty();
        assertThat(form.page().select("[name$=.place]")).hasSize(3);
        var more = thickness("2026-01-12", "0.2").with("more", "rows").post(site);
        assertThat(more.page().select("[name$=.place]")).hasSize(3);
        assertThat(more.typed("readings[0].thickness.number")).isEqualTo("0.2");
    }

    @Test
    void clearsDamageOnceWithAWord() {
        send(damage("WEEPING"));

        assertThat(SentForm.get(site, "/receivers/1").text()).contains("■ damage reported", "weeping", "■ stands");
        assertThat(SentForm.get(site, "/findings/1/clear").text()).contains("weeping low on the shell");
        assertThat(anew(CLEAR).with("note", "").post(site).error("note")).contains("who says that it is safe");
        assertThat(anew(CLEAR).with("foundOn", "2026-06-09").post(site).error("foundOn"))
                .contains("2026-06-10");
        assertThat(anew(CLEAR).post(site, People.of(Role.TECHNICIAN)).status()).isEqualTo(403);
        send(anew(CLEAR));
        assertThat(anew(CLEAR).post(site).status()).isEqualTo(409);
        assertThat(SentForm.get(site, "/receivers/1").text())
                .contains("Mended, 2026-06-11 by Ann (ann): dent from a forklift")
                .doesNotContain("damage reported");
        assertThat(SentForm.get(site, "/findings/1/clear").redirect()).isEqualTo("/receivers/1");
        assertThat(SentForm.get(site, "/findings/2/clear").status()).isEqualTo(404);
    }

    @Test
    void letsATechnicianReportDamageButNotRegister() {
        var technician = People.of(Role.TECHNICIAN);
        send(VALVE);

        assertThat(damage("BULGE").post(site, technician).status()).isEqualTo(302);
        assertThat(valveTest("2026-01-10").post(site, technician).status()).isEqualTo(302);
        assertThat(CERTIFICATE.post(site, technician).status()).isEqualTo(403);
        assertThat(thickness("2026-01-11", "0.24").post(site, technician).status())
                .isEqualTo(403);
    }

    @Test
    void knowsNoOtherRecord() {
        for (String address : List.of(
                "/receivers/9/valves/new",
                "/receivers/9/certificates/new",
                "/receivers/9/inspections/new",
                "/receivers/9/findings/new",
                "/valves/9/edit",
                "/valves/9/tests/new",
                "/valve-tests/9/correct",
                "/certificates/9",
                "/inspections/9/correct",
                "/findings/9/clear",
                "/sites/9/intervals")) {
            assertThat(SentForm.get(site, address).status()).as(address).isEqualTo(404);
        }
    }

    /** Whatever is typed: saved, asked or refused, never a failure of ours. */
    @Test
    void neverFailsOnOddInput() {
        send(VALVE, valveTest("2026-01-10"), damage("BULGE"), thickness("2026-01-11", "0.24"));
        List<Integer> answers = new ArrayList<>();
        for (SentForm sound : List.of(
                VALVE.with("tag", "RV-2"),
                VALVE.at("/valves/1").with("edit.reason", "x").with("edit.version", "0"),
                CERTIFICATE,
                valveTest("2026-01-11"),
                valveTest("2026-01-11").at("/valve-tests/1/correct").with("edit.reason", "x"),
                thickness("2026-01-12", "0.23"),
                thickness("2026-01-12", "0.23").at("/inspections/1/correct").with("edit.reason", "x"),
                damage("OTHER"),
                CLEAR.with("submission", ""))) {
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
        assertThat(SentForm.get(site, "/receivers/1").status()).isEqualTo(200);
        assertThat(SentForm.get(site, "/changes").status()).isEqualTo(200);
        assertThat(SentForm.get(site, "/due").status()).isEqualTo(200);
    }
}

@OnH2
final class VesselRecordsOnH2WebTests extends VesselRecordsWebTests {}

@OnPostgres
final class VesselRecordsOnPostgresWebTests extends VesselRecordsWebTests {}
