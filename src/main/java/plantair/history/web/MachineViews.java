package plantair.history.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.history.MachineFile;
import plantair.history.web.MachineView.RatingRow;
import plantair.history.web.MachineView.RecordRow;
import plantair.testrecord.PumpUpTest;
import plantair.web.UnitSet;

/** From all that is known of a machine to its page. */
@Component
final class MachineViews {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm zzz", Locale.ROOT);

    private final HistoryWords words;
    private final PlateFacts plateFacts;
    private final Trends trends;

    MachineViews(HistoryWords words, PlateFacts plateFacts, Trends trends) {
        this.words = words;
        this.plateFacts = plateFacts;
        this.trends = trends;
    }

    MachineView of(MachineFile file, UnitSet units) {
        var machine = file.machine();
        var facts = machine.facts();
        return new MachineView(
                machine.compressor().id(),
                facts.plate().tag(),
                machine.compressor().site().name(),
                machine.isRetired(),
                facts.plate().note(),
                plateFacts.of(facts.plate()),
                facts.ratings().stream()
                        .map(rating -> new RatingRow(
                                rating.pressure().toString(),
                                rating.flow().toString(),
                                words.label("basis", rating.basis())))
                        .toList(),
                trends.trend(machine.history()),
                trends.points(file, units),
                records(file));
    }

    private static List<RecordRow> records(MachineFile file) {
        return file.records().stream()
                .map(test -> record(test, file.corrections().get(test.id())))
                .toList();
    }

    private static RecordRow record(PumpUpTest test, @Nullable PumpUpTest correction) {
        return new RecordRow(
                test.id(),
                at(test.performedAt(), test.zone()),
                test.tester(),
                at(test.recordedAt(), test.zone()),
                test.recordedBy(),
                test.supersedesId(),
                test.reason(),
                correction == null ? null : correction.id(),
                correction == null ? null : correction.reason());
    }

    private static String at(Instant instant, ZoneId zone) {
        return MINUTE.format(instant.atZone(zone));
    }
}
