package plantair.leaktest.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.leaktest.Entry;
import plantair.leaktest.HoldOfLeakTest;
import plantair.leaktest.LeakResult;
import plantair.leaktest.LeakTest;
import plantair.leaktest.LeakTestDraft;
import plantair.leaktest.LeakTests;
import plantair.leaktest.MachineCopy;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.site.Site;
import plantair.web.Status;
import plantair.web.UnitSet;

/** Makes the view of a leak test. */
@Component
class LeakTestViews {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final LeakTests tests;
    private final Compressors compressors;
    private final MessageSource messages;

    LeakTestViews(LeakTests tests, Compressors compressors, MessageSource messages) {
        this.tests = tests;
        this.compressors = compressors;
        this.messages = messages;
    }

    LeakWords words(UnitSet units, Locale locale) {
        return new LeakWords(units, messages, locale);
    }

    static String when(Instant at, ZoneId zone) {
        return WHEN.format(at.atZone(zone));
    }

    LeakTestView of(LeakTest test, Site site, UnitSet units, Locale locale) {
        LeakTestDraft draft = test.draft();
        LeakResult result = LeakResult.of(draft);
        LeakWords words = words(units, locale);
        Optional<LeakTest> later = tests.findByEntrySupersedesId(test.id());
        return new LeakTestView(
                test.id(),
                site.id(),
                site.name(),
                when(draft.performedAt(), ZoneId.of(draft.zone())),
                draft.kind().name(),
                draft.place().name(),
                draft.compressorId(),
                Optional.ofNullable(draft.compressorId())
                        .flatMap(compressors::findById)
                        .map(Compressor::tag)
                        .orElse(null),
                draft.tester(),
                draft.state().usersOff(),
                draft.state().drainsOff(),
                draft.note(),
                result.loads()
                        .map(loads -> words.format()
                                .percent(loads.share().share(), loads.share().u()))
                        .orElse(""),
                result.leak().map(leak -> LeakWords.flow(words.format(), leak)).orElse(""),
                words.format().gauge(result.at()),
                words.level(result).orElse(null),
                result.two()
                        .flatMap(LeakResult.Two::byGuide)
                        .map(flow -> LeakWords.flow(words.format(), flow))
                        .orElse(""),
                result.two()
                        .map(two -> LeakWords.flow(words.format(), two.meanLoss()))
                        .orElse(""),
                words.findings(test, result),
                new LeakWorking(words).of(result),
                readings(draft, words),
                record(test, later),
                later.isEmpty() && !test.entry().withdrawn() && HoldOfLeakTest.isSound(draft, result));
    }

    private static LeakTestView.Readings readings(LeakTestDraft draft, LeakWords words) {
        var state = draft.state();
        return new LeakTestView.Readings(
                draft.cycles(),
                draft.machines().stream()
                        .map(machine -> machine(machine, words))
                        .toList(),
                draft.readings(),
                draft.volumes(),
                state.volume() == null ? null : state.volume() + " ± " + state.volumePercent(),
                state.barometer() == null ? null : state.barometer().toString(),
                state.division() == null ? null : state.division().toString(),
                state.leaveEarly());
    }

    private static LeakTestView.Machine machine(MachineCopy copy, LeakWords words) {
        String capacity = copy.measuredFlow() == null || copy.measuredAt() == null
                ? words.say("leakTest.machine.typed", copy.capacity(), copy.capacityAt(), copy.capacityPercent())
                : words.say(
                        "leakTest.machine.measured",
                        words.format().flow(new FlowRate(copy.measuredFlow())),
                        words.format().gauge(new GaugePressure(copy.measuredAt())),
                        copy.measuredTestId(),
                        copy.measuredOn());
        return new LeakTestView.Machine(copy.compressorId(), copy.label(), capacity, copy.measuredTestId());
    }

    private static LeakTestView.Record record(LeakTest test, Optional<LeakTest> later) {
        Entry entry = test.entry();
        return new LeakTestView.Record(
                entry.recordedBy(),
                when(entry.recordedAt(), ZoneId.of(test.draft().zone())),
                entry.withdrawn(),
                entry.supersedesId(),
                entry.reason(),
                later.map(LeakTest::id).orElse(null),
                later.map(one -> one.entry().reason()).orElse(null));
    }

    /** A test as a list shows it. */
    record Row(
            long id,
            String when,
            String kind,
            String place,
            String tester,
            String result,
            List<Status> level,
            boolean withdrawn) {}

    Row row(LeakTest test, UnitSet units, Locale locale) {
        LeakTestDraft draft = test.draft();
        LeakResult result = LeakResult.of(draft);
        LeakWords words = words(units, locale);
        return new Row(
                test.id(),
                when(draft.performedAt(), ZoneId.of(draft.zone())),
                draft.kind().name(),
                draft.place().name(),
                draft.tester(),
                words.inShort(result),
                words.level(result).stream().toList(),
                test.entry().withdrawn());
    }
}
