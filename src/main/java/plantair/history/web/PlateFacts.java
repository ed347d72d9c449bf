package plantair.history.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.equipment.CompressorPlate;
import plantair.history.web.MachineView.Fact;

/** The plate of a compressor as lines of text; what is not known is left out. */
@Component
final class PlateFacts {

    private final HistoryWords words;

    PlateFacts(HistoryWords words) {
        this.words = words;
    }

    List<Fact> of(CompressorPlate plate) {
        List<Fact> facts = new ArrayList<>();
        add(facts, "makerModel", plate.makerModel());
        add(facts, "serialNumber", plate.serialNumber());
        add(facts, "kind", words.label("history.kind", plate.kind()));
        add(facts, "stages", plate.stages());
        add(facts, "drive", words.label("history.drive", plate.drive()));
        add(facts, "control", words.label("history.control", plate.control()));
        add(facts, "motorPower", plate.motorPower());
        add(facts, "motorVoltage", plate.motorVoltage());
        add(facts, "motorCurrent", plate.motorCurrent());
        add(facts, "motorPhases", plate.motorPhases());
        add(facts, "frequency", plate.frequency());
        add(facts, "ratedSpeed", plate.ratedSpeed());
        add(facts, "displacement", plate.displacement());
        add(facts, "loadedHours", plate.loadedHours());
        return facts;
    }

    private static void add(List<Fact> facts, String name, @Nullable Object value) {
        String text = Objects.toString(value, "");
        if (!text.isEmpty()) {
            facts.add(new Fact("history.plate." + name, text));
        }
    }
}
