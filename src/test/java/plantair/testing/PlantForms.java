package plantair.testing;

import java.util.UUID;

/** The forms of a small plant as a browser sends them, sound as they stand; a test changes what it is about. */
public final class PlantForms {

    /** A site 600 ft up. */
    public static final SentForm SITE = SentForm.to("/sites")
            .with("name", "North works")
            .with("zone", "America/Chicago")
            .with("elevation", "600", "[ft_i]")
            .with("barometer", "", "[in_i'Hg]");

    /** A two-stage piston machine of site 1, rated 35 cfm of free air at 175 psi. */
    public static final SentForm COMPRESSOR = SentForm.to("/compressors")
            .with("site", "1")
            .with("tag", "C-1")
            .with("kind", "PISTON")
            .with("stages", "2")
            .with("drive", "BELT")
            .with("control", "START_STOP")
            .with("ratings[0].pressure", "175", "[psi]")
            .with("ratings[0].flow", "35", "[cft_i]/min")
            .with("ratings[0].basis", "INTAKE")
            .with("inService", "true");

    /** A receiver of site 1, 120 gallons. */
    public static final SentForm RECEIVER = SentForm.to("/receivers")
            .with("site", "1")
            .with("tag", "R-1")
            .with("volume", "120", "[gal_us]")
            .with("volumeKnownBy", "PLATE")
            .with("mawp", "200", "[psi]")
            .with("reliefSet", "200", "[psi]")
            .with("inService", "true");

    /** Pipe of site 1, 2.1 gallons. */
    public static final SentForm PIPE = SentForm.to("/pipes")
            .with("site", "1")
            .with("tag", "P-1")
            .with("length", "", "[ft_i]")
            .with("bore", "", "[in_i]")
            .with("volume", "2.1", "[gal_us]")
            .with("inService", "true");

    /** A test gauge, 0.5 % of 200 psi. */
    public static final SentForm GAUGE = SentForm.to("/instruments")
            .with("kind", "GAUGE")
            .with("tag", "G-1")
            .with("span", "200", "[psi]")
            .with("grade", "ASME_2A")
            .with("gradePercent", "", "%")
            .with("division", "1", "[psi]")
            .with("intervalMonths", "12")
            .with("inService", "true");

    private PlantForms() {}

    /** A certificate of instrument 1, without errors as found. */
    public static SentForm certificate(String number, String doneOn) {
        return SentForm.to("/instruments/1/calibrations")
                .with("submission", UUID.randomUUID().toString())
                .with("certificateNumber", number)
                .with("doneOn", doneOn)
                .with("laboratory", "Own bench")
                .with("leftInOrder", "YES");
    }

    /** Machine 1 on receiver 1 and pipe 1: 140 to 172 psi at 14.5 psia, dry air of 75 °F, 95 °F in the receiver. */
    public static SentForm pumpUp(String date, String... seconds) {
        SentForm form = SentForm.to("/compressors/1/tests")
                .with("submission", UUID.randomUUID().toString())
                .with("date", date)
                .with("time", "08:00")
                .with("tester", "Ann")
                .with("receivers", "1")
                .with("pipes", "1")
                .with("barometer", "14.5", "[psi]")
                .with("intakeTemperature", "75", "[degF]")
                .with("intakeHumidity", "0", "%")
                .with("airTemperature", "MEASURED");
        return band(air(runs(form, seconds), "95", "[degF]"), "140.0", "172.0", "[psi]");
    }

    /** The same with these elapsed times. */
    public static SentForm runs(SentForm form, String... seconds) {
        SentForm more = form;
        for (int i = 0; i < seconds.length; i++) {
            more = more.with("runs[" + i + "].elapsed", seconds[i], "s");
        }
        return more;
    }

    /** The same with these pressures in each of three runs. */
    public static SentForm band(SentForm form, String from, String to, String unit) {
        SentForm more = form;
        for (int i = 0; i < 3; i++) {
            more = more.with("runs[" + i + "].startPressure", from, unit)
                    .with("runs[" + i + "].stopPressure", to, unit);
        }
        return more;
    }

    /** The same with this air in the receiver throughout three runs. */
    public static SentForm air(SentForm form, String number, String unit) {
        SentForm more = form;
        for (int i = 0; i < 3; i++) {
            more = more.with("runs[" + i + "].startAir", number, unit).with("runs[" + i + "].stopAir", number, unit);
        }
        return more;
    }
}
