package plantair.testing;

import java.util.UUID;

/** The forms of leak tests and found leaks of site 1 as a browser sends them, sound as they stand. */
public final class LeakForms {

    private static final String TESTS = "/sites/1/leak-tests";

    private LeakForms() {}

    private static SentForm leakTest(String kind, String place) {
        return SentForm.to(TESTS)
                .with("submission", UUID.randomUUID().toString())
                .with("kind", kind)
                .with("date", "2026-06-14")
                .with("time", "22:10")
                .with("tester", "Cy")
                .with("place", place)
                .with("compressor", "")
                .with("usersOff", "true")
                .with("drainsOff", "true")
                .with("barometer", "", "[in_i'Hg]")
                .with("note", "");
    }

    /** Compressor 1, typed as 210 cfm ± 6 % at 100 psi, in cycles of these times, each three parted by blanks, s. */
    public static SentForm loadTimes(String... cycles) {
        SentForm form = leakTest("LOAD_TIMES", "WHOLE_SYSTEM")
                .with("atPressure", "100", "[psi]")
                .with("machines[0].id", "1")
                .with("machines[0].ran", "true")
                .with("machines[0].capacity", "210", "[cft_i]/min")
                .with("machines[0].capacityAt", "100", "[psi]")
                .with("machines[0].percent", "6", "%");
        for (int i = 0; i < cycles.length; i++) {
            String[] times = cycles[i].split(" ");
            form = form.with("cycles[" + i + "].loaded", times[0], "s")
                    .with("cycles[" + i + "].unloaded", times[1], "s")
                    .with("cycles[" + i + "].standing", times.length > 2 ? times[2] : "", "s");
        }
        return form;
    }

    private static SentForm fall(String kind) {
        return leakTest(kind, "WHOLE_SYSTEM")
                .with("barometer", "14.7", "[psi]")
                .with("volume", "", "[cft_i]")
                .with("volumePercent", "", "%")
                .with("division", "1", "[psi]");
    }

    /** A typed 100 cubic feet from 100 to 50 psi in 5 minutes, 14.7 psia. */
    public static SentForm twoReadings() {
        return fall("TWO_READINGS")
                .with("atPressure", "100", "[psi]")
                .with("volume", "100", "[cft_i]")
                .with("volumePercent", "4", "%")
                .with("first", "100", "[psi]")
                .with("last", "50", "[psi]")
                .with("waited", "5", "min");
    }

    /** Half a cubic metre at sea level, with these lines of seconds and bar. */
    public static SentForm pastedFall(String lines) {
        return fall("FALL")
                .with("atPressure", "8", "bar")
                .with("barometer", "1013.25", "hPa")
                .with("volume", "0.5", "m3")
                .with("volumePercent", "2", "%")
                .with("division", "0.05", "bar")
                .with("pasted", lines)
                .with("pastedTime", "s")
                .with("pastedPressure", "bar");
    }

    /** The volume of machine 1 behind its shut valve: receiver 1 and pipe 1. */
    public static SentForm holdOfMachine(String first, String last, String minutes) {
        return fall("TWO_READINGS")
                .with("place", "TEST_VOLUME")
                .with("compressor", "1")
                .with("atPressure", "156", "[psi]")
                .with("barometer", "14.5", "[psi]")
                .with("division", "0.1", "[psi]")
                .with("receivers", "1")
                .with("pipes", "1")
                .with("first", first, "[psi]")
                .with("last", last, "[psi]")
                .with("waited", minutes, "min");
    }

    /** A leak, judged as 4 cfm. */
    public static SentForm leak(String tag) {
        return SentForm.to("/sites/1/leaks")
                .with("submission", UUID.randomUUID().toString())
                .with("tag", tag)
                .with("place", "Bay 3, column 4, head height")
                .with("component", "COUPLING")
                .with("priority", "HIGH")
                .with("foundOn", "2026-06-10")
                .with("foundBy", "Cy")
                .with("sizeBy", "JUDGED")
                .with("flow", "4", "[cft_i]/min")
                .with("bore", "", "[in_i]")
                .with("pressure", "", "[psi]")
                .with("note", "");
    }

    /** What became of leak 1 that had so many steps. */
    public static SentForm step(int steps, String kind, String doneOn) {
        return SentForm.to("/leaks/1/steps")
                .with("submission", UUID.randomUUID().toString())
                .with("position", String.valueOf(steps))
                .with("kind", kind)
                .with("doneOn", doneOn)
                .with("doneBy", "Cy")
                .with("note", "new seal");
    }
}
