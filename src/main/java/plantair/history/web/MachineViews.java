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
    private final TrendWords trends;
    private final Levels levels;
    private final PointRows points;
    private final EventRows events;
    private final BaselineRows baselines;
    private final PageWords page;

    MachineViews(
            HistoryWords words,
            PlateFacts plateFacts,
            TrendWords trends,
            Levels levels,
            PointRows points,
            EventRows events,
            BaselineRows baselines,
            PageWords page) {
        this.words = words;
        this.plateFacts = plateFacts;
        this.trends = trends;
        this.levels = levels;
        this.points = points;
        this.events = events;
        this.baselines = baselines;
        this.page = page;
    }

    MachineView of(MachineFile file, UnitSet units) {
        var machine = file.machine();
        var facts = machine.facts();
        TrendView trend = trends.of(machine.history(), file.limits());
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
                trend,
                chart(file, trend, units),
                points.of(file, units),
                events.of(file),
                baselines.of(file),
                records(file));
    }

    private ChartView chart(MachineFile file, TrendView trend, UnitSet units) {
        var history = file.machine().history();
        String summary = history.last()
                .map(last -> page.say(
                        "history.chart.summary",
                        history.tests().size(),
                        history.tests().get(0).date().toString(),
                        last.date().toString(),
                        trend.word().word(),
                        trend.standing().word(),
                        file.events().size()))
                .orElse("");
        return new ChartView(
                summary, new LineRows(history, file.limits(), units).rows(), levels.of(history, file.limits(), units));
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
