package plantair.testrecord.web;

import java.util.UUID;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;

/** What a browser sends of a sound test form; a test changes the one thing it is about. */
final class TestFormParameters {

    private final MultiValueMap<String, String> parameters = new LinkedMultiValueMap<>();

    private TestFormParameters() {}

    /** Three runs of 140 to 172 psig in receiver 1, air temperatures read. */
    static TestFormParameters sound() {
        var form = new TestFormParameters();
        form.with("submission", UUID.randomUUID().toString())
                .with("date", "2026-05-12")
                .with("time", "14:05")
                .with("tester", "Ilse Øberg")
                .with("airTemperature", "MEASURED")
                .with("receivers", "1")
                .reading("barometer", "29.4", "[in_i'Hg]")
                .reading("intakeTemperature", "75", "[degF]")
                .reading("intakeHumidity", "45", "%")
                .reading("water", "", "[gal_us]")
                .reading("speed", "", "{rev}/min")
                .with("notes", "Second stage valve ticks.");
        String[] seconds = {"1:02.2", "62.8", "62.5"};
        for (int i = 0; i < seconds.length; i++) {
            form.run(i, "140.0", "172.0", seconds[i]);
        }
        return form;
    }

    TestFormParameters with(String name, String value) {
        parameters.set(name, value);
        return this;
    }

    TestFormParameters reading(String name, String number, String unit) {
        return with(name + ".number", number).with(name + ".unit", unit);
    }

    TestFormParameters run(int index, String start, String stop, String elapsed) {
        String run = "runs[" + index + "].";
        return reading(run + "startPressure", start, "[psi]")
                .reading(run + "stopPressure", stop, "[psi]")
                .reading(run + "elapsed", elapsed, "s")
                .reading(run + "startAir", "94", "[degF]")
                .reading(run + "stopAir", "96", "[degF]")
                .reading(run + "settledPressure", "", "[psi]")
                .reading(run + "settledAir", "", "[degF]")
                .reading(run + "settledWait", "", "min");
    }

    MultiValueMap<String, String> parameters() {
        return parameters;
    }
}
