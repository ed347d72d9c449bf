package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.pumpUp;
import static plantair.testing.VesselForms.CERTIFICATE;
import static plantair.testing.VesselForms.VALVE;
import static plantair.testing.VesselForms.damage;
import static plantair.testing.VesselForms.interval;
import static plantair.testing.VesselForms.thickness;
import static plantair.testing.VesselForms.valveTest;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import plantair.equipment.Receivers;
import plantair.equipment.VesselHazard;
import plantair.equipment.VesselStop;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;
import plantair.vessel.VesselChecks;

/** The vessel says no: its valve is tagged too high and its certificate ran out three weeks ago. It is 2026-06-15. */
abstract class VesselSaysNoStoryTests extends Story {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);

    private static final SentForm TANK = RECEIVER.with("volume", "200", "[gal_us]")
            .with("reliefSet", "", "[psi]")
            .with("certificateRequired", "YES")
            .with("shellRequired", "0.215", "[in_i]")
            .with("headRequired", "", "[in_i]");

    @Autowired
    private VesselChecks checks;

    @Autowired
    private Receivers receivers;

    @BeforeEach
    void plant() {
        register(SITE, COMPRESSOR, TANK, PIPE);
    }

    private void confirmed(SentForm form) {
        send(form.with("confirmed", form.post(site).token()));
    }

    private List<VesselStop> stops() {
        return checks.of(receivers.findWithSiteById(1).orElseThrow(), TODAY);
    }

    private List<VesselHazard> hazards() {
        return stops().stream().map(VesselStop::hazard).toList();
    }

    @Test
    void stopsBeforeAnyTimingWithTheFigures() {
        confirmed(VALVE.with("setPressure", "250", "[psi]"));
        confirmed(CERTIFICATE.with("issuedOn", "2021-05-25").with("validTo", "2026-05-25"));

        assertThat(stops())
                .extracting(VesselStop::reason)
                .containsExactly(
                        "Relief valve RV-1 is set at 250 psi, above the MAWP of 200 psi.",
                        "Relief valve RV-1 is set at 250 psi; certificate P-1207 permits 200 psi.",
                        "Certificate P-1207 ran out on 2026-05-25.");
        assertThat(stops()).allSatisfy(stop -> assertThat(stop.act()).isNotBlank());
        assertThat(SentForm.get(site, "/receivers/1").text())
                .contains(
                        "Stop: do not test with this receiver",
                        "■ relief valve set above MAWP",
                        "250 psi",
                        "■ run out");
        assertThat(SentForm.get(site, "/receivers").text()).contains("■ certificate run out");
        var asked = pumpUp("2026-06-14", "60.2", "60.8", "60.5").post(site);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.warning("receivers")).contains("RV-1 is set at 250 psi", "ran out on 2026-05-25");
        assertThat(SentForm.get(site, "/tests").text()).doesNotContain("2026-06-14");
    }

    /** Own case: (0.240 − 0.232)/4 = 0.002 in a year; (0.232 − 0.215)/0.002 = 8.5 years, half 4.25. */
    @Test
    void leavesTheLifeOfTheWallToTheInspector() {
        register(thickness("2022-06-15", "0.240"), thickness("2026-06-15", "0.232"));

        var page = SentForm.get(site, "/receivers/1").page();

        assertThat(page.select("#wall tbody tr").text())
                .contains("bottom, drain end", "▲ thinning", "0.232 in", "0.215 in", "0.0020 in", "8.5", "4.25");
        assertThat(page.getElementById("least-life").text())
                .contains("8.5 years left", "half of that 4.25 years", "For the inspector to decide");
    }

    @Test
    void carriesTheErrorOfTheThicknessGauge() {
        register(
                thickness("2022-06-15", "0.240").with("accuracy", "0.001", "[in_i]"),
                thickness("2026-06-15", "0.232").with("accuracy", "0.001", "[in_i]"));

        // u(rate) = 0.000204 in, u(life) = 1.09 years: WallReferenceTests
        assertThat(SentForm.get(site, "/receivers/1")
                        .page()
                        .select("#wall tbody tr")
                        .text())
                .contains("0.00200 ± 0.00020 in", "8.5 ± 1.1", "4.25 ± 0.55");
    }

    @Test
    void namesEveryHazardAndTakesItBackWhenItIsPutRight() {
        assertThat(hazards()).containsExactly(VesselHazard.CERTIFICATE_MISSING, VesselHazard.RELIEF_UNKNOWN);
        register(VALVE, CERTIFICATE);
        assertThat(hazards()).isEmpty();
        send(valveTest("2026-06-01").with("passed", "NO"));
        assertThat(hazards()).containsExactly(VesselHazard.RELIEF_FAILED);
        send(valveTest("2026-06-02").with("method", "REPLACED"));
        assertThat(hazards()).isEmpty();
        send(damage("BULGE"));
        send(thickness("2026-06-14", "0.214"));
        assertThat(stops())
                .extracting(VesselStop::reason)
                .containsExactly(
                        "Seen on 2026-06-10: a bulge – low on the shell. Nobody has recorded that it is mended.",
                        "The wall at bottom, drain end was 0.214 in, 5.44 mm thick on 2026-06-14; it needs 0.215 in, 5.46 mm.");
        send(SentForm.to("/findings/1/clear")
                .with("submission", UUID.randomUUID().toString())
                .with("foundOn", "2026-06-15")
                .with("note", "no bulge but paint, B. Ray looked"));
        assertThat(hazards()).containsExactly(VesselHazard.WALL_BELOW_REQUIRED);
    }

    @Test
    void countsTheIntervalOfTheSiteForValves() {
        register(VALVE, CERTIFICATE, interval("VALVE_TEST", "12", "our insurer"));

        // installed 2024-05-01 and never tested since
        assertThat(stops())
                .extracting(VesselStop::reason)
                .containsExactly("Relief valve RV-1 was due for its test on 2025-05-01: every 12 months, our insurer.");
        send(valveTest("2025-06-15"));
        assertThat(hazards()).isEmpty();
        send(valveTest("2025-06-14").at("/valve-tests/1/correct").with("edit.reason", "the day before"));
        assertThat(hazards()).containsExactly(VesselHazard.RELIEF_OVERDUE);
        send(valveTest("2025-06-14")
                .at("/valve-tests/2/correct")
                .with("edit.reason", "it was RV-2")
                .with("withdrawn", "true"));
        assertThat(stops().get(0).reason()).contains("2025-05-01");
    }

    @Test
    void countsWhatTheInspectorLeftOfThePressure() {
        register(VALVE, CERTIFICATE, thickness("2026-06-01", "0.220").with("reducedMawp", "150", "[psi]"));

        assertThat(stops())
                .extracting(VesselStop::reason)
                .containsExactly("Relief valve RV-1 is set at 180 psi, above the MAWP of 150 psi, to which the"
                        + " inspection of 2026-06-01 reduced it.");
    }

    @Test
    void stopsAboveTheCutOut() {
        register(VALVE, CERTIFICATE);
        var higher = TANK.at("/receivers/1")
                .with("cutOut", "205", "[psi]")
                .with("edit.reason", "switch read")
                .with("edit.version", "0");

        confirmed(higher);

        assertThat(stops())
                .extracting(VesselStop::reason)
                .containsExactly("What fills it stops at 205 psi, above the MAWP of 200 psi.");
    }
}

@OnH2
final class VesselSaysNoOnH2StoryTests extends VesselSaysNoStoryTests {}

@OnPostgres
final class VesselSaysNoOnPostgresStoryTests extends VesselSaysNoStoryTests {}
