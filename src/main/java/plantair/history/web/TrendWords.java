package plantair.history.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.history.web.TrendView.Note;
import plantair.quantity.Rounded;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;
import plantair.trend.Limits;
import plantair.trend.OutputTrend;
import plantair.trend.SharedError.Cause;
import plantair.trend.SourceChange;
import plantair.trend.Standing;
import plantair.trend.TrendCode;
import plantair.trend.YearlyChange;
import plantair.web.Status;
import plantair.web.Status.Kind;

/** Puts a trend into words: never sharper than its uncertainty, and always with the decline that is ruled out. */
@Component
final class TrendWords {

    private static final double LEAST_SHIFT = 0.0005;

    private final HistoryWords words;
    private final PageWords page;

    TrendWords(HistoryWords words, PageWords page) {
        this.words = words;
        this.page = page;
    }

    TrendView of(MachineHistory history, Limits limits) {
        OutputTrend trend = history.trend();
        Standing standing = history.standing(limits);
        return new TrendView(
                words.trend(trend.code()),
                sentence(trend),
                notes(history),
                new Status(kind(standing), words.label("history.standing", standing)),
                page.say(
                        "history.standing.says." + standing,
                        limits.watchBelow(),
                        limits.planBelow(),
                        limits.actBelow()));
    }

    private static Kind kind(Standing standing) {
        return switch (standing) {
            case OK -> Kind.GOOD;
            case ACT -> Kind.ALARM;
            case REPEAT, WATCH, PLAN -> Kind.WATCH;
            case NOT_KNOWN, CANNOT_BE_TOLD -> Kind.NONE;
        };
    }

    private String sentence(OutputTrend trend) {
        if (trend.count() == 0) {
            return page.say("history.trend.says.NO_TEST");
        }
        String key = "history.trend.says." + trend.code();
        if (trend.code() == TrendCode.TWO_TESTS) {
            return trend.difference()
                    .map(two -> page.say(
                            key + ".numbers",
                            Rounded.toUncertainty(two.percent(), two.halfWidthPercent()),
                            Rounded.toUncertainty(two.halfWidthPercent(), two.halfWidthPercent())))
                    .orElseGet(() -> page.say(key));
        }
        return trend.yearlyChange()
                .map(year -> page.say(
                        key,
                        trend.count(),
                        Rounded.places(trend.years(), 1),
                        sharp(year.percent(), year),
                        sharp(year.lowPercent(), year),
                        sharp(year.highPercent(), year)))
                .orElseGet(() -> page.say(key));
    }

    /** One decimal, two where the uncertainty is that small: a rate of wear with more digits says nothing more. */
    private static String sharp(double percent, YearlyChange year) {
        int places = year.standardUncertainty() > 0 ? Rounded.placesFor(year.standardUncertainty()) - 1 : 1;
        return Rounded.places(percent, Math.max(1, Math.min(2, places)));
    }

    private List<Note> notes(MachineHistory history) {
        OutputTrend trend = history.trend();
        List<Note> notes = new ArrayList<>();
        trend.ruledOutDecline().ifPresent(percent -> notes.add(note(TrendNote.RULED_OUT, PageWords.percent(percent))));
        trend.detectableDecline()
                .ifPresent(percent -> notes.add(note(TrendNote.DETECTABLE, PageWords.percent(percent))));
        trend.scatter().ifPresent(ratio -> notes.add(note(TrendNote.SCATTER, Rounded.places(ratio, 1))));
        trend.bend().ifPresent(day -> notes.add(note(TrendNote.SLOPE_SINCE, day.toString())));
        ranks(history).ifPresent(notes::add);
        if (trend.neighboursAlike()) {
            notes.add(note(TrendNote.NEIGHBOURS_ALIKE));
        }
        Stream.of(Cause.values())
                .flatMap(cause -> source(cause, trend).stream())
                .forEach(notes::add);
        List<ResultLine> away =
                history.tests().stream().filter(history::isOtherPressure).toList();
        if (!away.isEmpty()) {
            notes.add(note(TrendNote.OTHER_PRESSURE, away));
        }
        return notes;
    }

    private Optional<Note> ranks(MachineHistory history) {
        return history.trend()
                .ranks()
                .map(ranks -> ranks.agrees()
                        ? note(TrendNote.RANKS_AGREE)
                        : note(TrendNote.RANKS_DISAGREE, carriers(history)));
    }

    private static List<ResultLine> carriers(MachineHistory history) {
        Set<Long> carriers = Set.copyOf(history.trend().carriedBy());
        return history.tests().stream()
                .filter(test -> carriers.contains(test.testId()))
                .toList();
    }

    /** One note for all changes of one kind; a shift that rounds to nothing is left out. */
    private Optional<Note> source(Cause cause, OutputTrend trend) {
        List<SourceChange> changes = trend.sourceChanges().stream()
                .filter(change -> change.cause() == cause && change.relativeU() >= LEAST_SHIFT)
                .toList();
        return changes.stream()
                .max(Comparator.comparingDouble(SourceChange::relativeU))
                .map(largest -> note(
                        TrendNote.valueOf("SOURCE_" + cause),
                        changes.stream()
                                .map(change -> change.since().toString())
                                .collect(Collectors.joining(", ")),
                        PageWords.percent(100 * largest.relativeU())));
    }

    private Note note(TrendNote code, @Nullable Object... args) {
        return new Note(code.name(), page.say("history.note." + code, args), List.of());
    }

    private Note note(TrendNote code, List<ResultLine> tests) {
        return new Note(
                code.name(),
                page.say("history.note." + code, tests.size()),
                tests.stream().map(TestLink::of).toList());
    }
}
