package plantair.history.web;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.history.MachineFile;
import plantair.history.web.BaselineView.ChoiceRow;
import plantair.testrecord.BaselineChoice;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;

/** From the chosen baselines of a machine to rows that say who chose which, when and why. */
@Component
final class BaselineRows {

    private final HistoryWords words;

    BaselineRows(HistoryWords words) {
        this.words = words;
    }

    BaselineView of(MachineFile file) {
        MachineHistory history = file.machine().history();
        List<ChoiceRow> rows = new ArrayList<>();
        for (BaselineChoice choice : file.choices()) {
            rows.add(row(choice, file));
        }
        Collections.reverse(rows);
        return new BaselineView(history.baseline().map(TestLink::of).orElse(null), rows);
    }

    private ChoiceRow row(BaselineChoice choice, MachineFile file) {
        ZoneId zone = file.machine().compressor().site().facts().zoneId();
        Optional<ResultLine> test = file.machine().history().tests().stream()
                .filter(line -> line.testId() == choice.testId())
                .findFirst();
        return new ChoiceRow(
                test.map(TestLink::of).orElseGet(() -> new TestLink(choice.testId(), "")),
                choice.chosenAt().atZone(zone).toLocalDate().toString(),
                choice.chosenBy(),
                choice.reason(),
                event(choice, file),
                state(choice, test, file));
    }

    private String event(BaselineChoice choice, MachineFile file) {
        return file.events().stream()
                .filter(event -> Objects.equals(event.id(), choice.eventId()))
                .findFirst()
                .map(event -> event.happenedOn() + ", " + words.label("event.kind", event.kind()))
                .orElse("");
    }

    /** A test that was corrected, or no longer joins the trend, is no baseline any more. */
    private static String state(BaselineChoice choice, Optional<ResultLine> test, MachineFile file) {
        MachineHistory history = file.machine().history();
        if (test.filter(history::isBaseline).isEmpty()) {
            return "history.baseline.void";
        }
        boolean newest = file.choices().stream()
                .filter(other -> other.id() > choice.id())
                .noneMatch(other -> history.tests().stream()
                        .anyMatch(line -> line.testId() == other.testId() && history.isBaseline(line)));
        return newest ? "history.baseline.inForce" : "history.baseline.earlier";
    }
}
