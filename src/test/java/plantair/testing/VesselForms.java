package plantair.testing;

import java.util.UUID;
import java.util.stream.Stream;

/** The forms of the safety records of receiver 1 as a browser sends them, sound as they stand. */
public final class VesselForms {

    /** Set at 180 psi. */
    public static final SentForm VALVE = SentForm.to("/receivers/1/valves")
            .with("tag", "RV-1")
            .with("setPressure", "180", "[psi]")
            .with("capacity", "200", "[cft_i]/min")
            .with("codeStamp", "UV")
            .with("installedOn", "2024-05-01")
            .with("note", "")
            .with("inService", "true");

    /** Valid for years yet. */
    public static final SentForm CERTIFICATE = SentForm.to("/receivers/1/certificates")
            .with("number", "P-1207")
            .with("issuedBy", "State boiler office")
            .with("issuedOn", "2024-05-10")
            .with("permitted", "200", "[psi]")
            .with("validTo", "2029-05-10")
            .with("note", "")
            .with("inForce", "true");

    private VesselForms() {}

    /** A lever lifted, and all well. */
    public static SentForm valveTest(String doneOn) {
        return SentForm.to("/valves/1/tests")
                .with("submission", UUID.randomUUID().toString())
                .with("doneOn", doneOn)
                .with("method", "LIFT")
                .with("poppedAt", "", "[psi]")
                .with("passed", "YES")
                .with("doneBy", "Ann")
                .with("note", "");
    }

    /** Wall measured at the drain end, in inches. */
    public static SentForm thickness(String doneOn, String inches) {
        return SentForm.to("/receivers/1/inspections")
                .with("submission", UUID.randomUUID().toString())
                .with("kind", "THICKNESS")
                .with("doneOn", doneOn)
                .with("inspector", "B. Ray, 1207")
                .with("employer", "Harbour Mutual")
                .with("findings", "")
                .with("reducedMawp", "", "[psi]")
                .with("nextDue", "")
                .with("instrument", "UT-1")
                .with("accuracy", "", "[in_i]")
                .with("readings[0].place", "bottom, drain end")
                .with("readings[0].part", "SHELL")
                .with("readings[0].thickness", inches, "[in_i]");
    }

    /** Damage. */
    public static SentForm damage(String kind) {
        return SentForm.to("/receivers/1/findings")
                .with("submission", UUID.randomUUID().toString())
                .with("foundOn", "2026-06-10")
                .with("kind", kind)
                .with("note", "low on the shell");
    }

    /** Something of every kind, corrections too. */
    public static Stream<SentForm> all() {
        return Stream.of(
                VALVE,
                CERTIFICATE,
                valveTest("2025-06-01"),
                valveTest("2025-06-02")
                        .at("/valve-tests/1/correct")
                        .with("edit.reason", "wrong day")
                        .with("poppedAt", "181", "[psi]"),
                thickness("2022-06-15", "0.240"),
                thickness("2022-06-15", "0.241")
                        .at("/inspections/1/correct")
                        .with("accuracy", "0.001", "[in_i]")
                        .with("reducedMawp", "190", "[psi]")
                        .with("nextDue", "2030-06-15")
                        .with("edit.reason", "read again"),
                damage("BULGE"),
                SentForm.to("/findings/1/clear")
                        .with("submission", UUID.randomUUID().toString())
                        .with("foundOn", "2026-06-11")
                        .with("note", "dent from a forklift, inspector B. Ray looked"),
                interval("VALVE_TEST", "12", "our insurer, letter of 2024"));
    }

    /** An interval of site 1. */
    public static SentForm interval(String kind, String months, String authority) {
        return SentForm.to("/sites/1/intervals/" + kind)
                .with("months", months)
                .with("authority", authority)
                .with("edit.reason", "set")
                .with("edit.version", "-1");
    }
}
