package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.certificate;
import static plantair.testing.PlantForms.pumpUp;

import java.util.UUID;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.account.SignedIn;
import plantair.testing.DemandForms;
import plantair.testing.LeakForms;
import plantair.testing.OfferForms;
import plantair.testing.People;
import plantair.testing.SampleFiles;
import plantair.testing.SentFile;
import plantair.testing.SentForm;
import plantair.testing.SentLog;
import plantair.testing.VesselForms;

/** A plant with something of every kind, recorded through the forms alone, as people do. */
final class AuditedPlant {

    static final SentForm EVENT = SentForm.to("/compressors/1/events/new")
            .with("happenedOn", "2026-03-01")
            .with("kind", "VALVES")
            .with("doneBy", "Harbour Air Service")
            .with("note", "Second stage plates new");

    /** The gauge reads 4 psi high at the stop. */
    private static final SentForm AS_FOUND = certificate("K-2", "2026-05-30")
            .with("points[0].reading", "140", "[psi]")
            .with("points[0].error", "0", "[psi]")
            .with("points[1].reading", "172", "[psi]")
            .with("points[1].error", "4", "[psi]");

    private AuditedPlant() {}

    static void record(MockMvcTester site) {
        sendAll(
                site,
                SITE,
                COMPRESSOR,
                RECEIVER,
                PIPE,
                GAUGE,
                certificate("K-1", "2026-01-02"),
                tested("2026-03-02"),
                tested("2026-04-02"),
                event(),
                AS_FOUND,
                SentForm.to("/calibrations/2/impact").with("note", "4 psi high"),
                tested("2026-06-02"));
        send(site, review(3), People.of(Role.MANAGER));
        attach(site, "RECEIVER/1", SampleFiles.jpeg());
        send(site, withdrawal(1));
        attach(site, "COMPRESSOR/1", SampleFiles.png());
        log(site);
        send(
                site,
                SentForm.to("/logs/1/withdraw")
                        .with("submission", UUID.randomUUID().toString())
                        .with("reason", "another receiver"));
        log(site);
        sendAll(site, VesselForms.all().toArray(SentForm[]::new));
        sendAll(site, leaks());
        sendAll(site, DemandForms.NOZZLE, DemandForms.CHOICE.with("standby", "1"));
        send(site, OfferForms.OFFER);
        sendAll(
                site,
                SITE.with("name", "South works"),
                COMPRESSOR.with("tag", "C-2"),
                GAUGE.with("tag", "G-2"),
                RECEIVER.with("tag", "R-2"),
                VesselForms.VALVE.with("tag", "RV-2").with("installedOn", "2026-01-05"),
                tested("2026-04-03").at("/tests/2/supersede").with("reason", "wrong day"),
                certificate("K-2", "2026-05-31")
                        .at("/instruments/1/calibrations/2/supersede")
                        .with("points[0].reading", "140", "[psi]")
                        .with("points[0].error", "1", "[psi]")
                        .with("edit.reason", "wrong day"),
                event().at("/events/1/correct")
                        .with("edit.reason", "wrong work")
                        .with("kind", "BELT"));
    }

    private static SentForm[] leaks() {
        return new SentForm[] {
            LeakForms.holdOfMachine("170", "165", "5"),
            LeakForms.loadTimes("90 410 5", "88 412"),
            LeakForms.leak("L-1"),
            LeakForms.step(0, "REPAIRED", "2026-06-11")
        };
    }

    private static void sendAll(MockMvcTester site, SentForm... forms) {
        for (SentForm form : forms) {
            send(site, form);
        }
    }

    static SentForm tested(String day) {
        return pumpUp(day, "60.2", "60.8", "60.5").with("gauge", "1").with("notes", "Ölstand\tgut\nC:\\air = 5 %s");
    }

    static SentForm event() {
        return EVENT.with("submission", UUID.randomUUID().toString());
    }

    static SentForm review(long test) {
        return SentForm.to("/tests/" + test + "/review")
                .with("submission", UUID.randomUUID().toString())
                .with("note", "gauge looked at");
    }

    static void attach(MockMvcTester site, String to, byte[] bytes) {
        assertThat(SentFile.of(to, "Schild\tÖ.bin", bytes, "plate").send(site).status())
                .isEqualTo(302);
    }

    static void log(MockMvcTester site) {
        send(
                site,
                SentLog.of(1, "fill 1.csv", SentLog.rise())
                        .columns(site)
                        .with("logger", "1")
                        .with("note", "second logger"));
    }

    static SentForm withdrawal(long attachment) {
        return SentForm.to("/attachments/" + attachment + "/withdraw")
                .with("submission", UUID.randomUUID().toString())
                .with("reason", "another receiver");
    }

    /** As Ann. */
    static String send(MockMvcTester site, SentForm form) {
        return send(site, form, People.ANN);
    }

    static String send(MockMvcTester site, SentForm form, SignedIn who) {
        var answer = form.post(site, who);
        assertThat(answer.status()).as(form.address() + " " + answer.text()).isEqualTo(302);
        return answer.redirect();
    }
}
