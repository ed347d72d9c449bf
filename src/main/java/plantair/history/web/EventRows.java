package plantair.history.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.history.MachineFile;
import plantair.maintenance.MaintenanceEvent;
import plantair.quantity.Rounded;
import plantair.testrecord.MachineHistory;
import plantair.trend.StepVerdict;
import plantair.web.Status;
import plantair.web.Status.Kind;

/** From the maintenance of a machine to rows that say whether it helped, newest first. */
@Component
final class EventRows {

    private static final int LETTERS = 26;

    private final HistoryWords words;
    private final PageWords page;

    EventRows(HistoryWords words, PageWords page) {
        this.words = words;
        this.page = page;
    }

    List<EventRow> of(MachineFile file) {
        List<EventRow> rows = new ArrayList<>();
        for (MaintenanceEvent event : file.events()) {
            rows.add(row(event, mark(rows.size()), file.machine().history()));
        }
        Collections.reverse(rows);
        return rows;
    }

    /** A to Z, then A1 to Z1 and so on: oldest first, so that a letter stays when more is done. */
    private static String mark(int index) {
        String letter = String.valueOf((char) ('A' + index % LETTERS));
        return index < LETTERS ? letter : letter + index / LETTERS;
    }

    private EventRow row(MaintenanceEvent event, String mark, MachineHistory history) {
        Optional<StepVerdict> verdict = history.trend().steps().stream()
                .filter(step -> event.mayStep() && step.date().equals(event.happenedOn()))
                .findFirst();
        boolean untested = event.mayStep() && history.isUntestedSince(event.happenedOn());
        String code = verdict.map(step -> step.code().name()).orElse(untested ? "UNTESTED" : "NO_TESTS");
        return new EventRow(
                event.id(),
                mark,
                event.happenedOn().toString(),
                words.label("event.kind", event.kind()),
                event.note(),
                event.doneBy(),
                event.mayStep() ? new Status(kind(verdict), page.say("history.step." + code)) : null,
                event.mayStep() ? text(code, verdict) : null,
                untested);
    }

    /** A step up is good news of the repair and a step down is not; without a verdict nothing is green. */
    private static Kind kind(Optional<StepVerdict> verdict) {
        if (verdict.isEmpty() || verdict.get().code() != StepVerdict.Code.LEVEL_CHANGED) {
            return Kind.NONE;
        }
        return verdict.get().percent() > 0 ? Kind.GOOD : Kind.WATCH;
    }

    private String text(String code, Optional<StepVerdict> verdict) {
        String key = "history.step.says." + code;
        return verdict.map(step -> page.say(
                        key,
                        signed(step.percent()),
                        signed(step.lowPercent()),
                        signed(step.highPercent()),
                        PageWords.percent(step.detectablePercent())))
                .orElseGet(() -> page.say(key));
    }

    private static String signed(double percent) {
        return (percent > 0 ? "+" : "") + Rounded.places(percent, 1);
    }
}
