package plantair.export;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import plantair.instrument.Calibration;
import plantair.instrument.Calibrations;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.Histories;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.StoredResult;
import plantair.testrecord.StoredResults;
import plantair.web.QuantityFormat;

/** The tests of a machine in words for the report of an audit pack. */
@Component
class PackLines {

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final PumpUpTests tests;
    private final StoredResults results;
    private final ResultProjection projection;
    private final Histories histories;
    private final Calibrations calibrations;
    private final MessageSource messages;

    PackLines(
            PumpUpTests tests,
            StoredResults results,
            ResultProjection projection,
            Histories histories,
            Calibrations calibrations,
            MessageSource messages) {
        this.tests = tests;
        this.results = results;
        this.projection = projection;
        this.histories = histories;
        this.calibrations = calibrations;
        this.messages = messages;
    }

    List<PackReport.Test> of(List<PumpUpTest> chosen, long compressorId, QuantityFormat format, Locale locale) {
        List<Long> ids = chosen.stream().map(PumpUpTest::id).toList();
        Map<Long, StoredResult> stored =
                results.ofTests(ids).stream().collect(Collectors.toMap(StoredResult::testId, Function.identity()));
        Map<Long, PumpUpTest> corrections = tests.findBySupersedesIdIn(ids).stream()
                .collect(Collectors.toMap(PumpUpTest::supersedesId, Function.identity()));
        MachineHistory history = histories.of(compressorId);
        return chosen.stream()
                .map(test -> test(
                        test,
                        stored.get(test.id()),
                        Optional.ofNullable(corrections.get(test.id())),
                        history,
                        format,
                        locale))
                .toList();
    }

    /** The baseline in force in words. */
    String baseline(long compressorId) {
        return histories
                .of(compressorId)
                .baseline()
                .map(line -> line.testId() + ", " + line.date())
                .orElse("");
    }

    private PackReport.Test test(
            PumpUpTest test,
            StoredResult stored,
            Optional<PumpUpTest> correction,
            MachineHistory history,
            QuantityFormat format,
            Locale locale) {
        PumpUpResult result = projection.result(stored);
        Optional<ResultLine> line = history.tests().stream()
                .filter(other -> other.testId() == test.id())
                .findFirst();
        boolean isBaseline = line.filter(history::isBaseline).isPresent();
        return new PackReport.Test(
                test.id(),
                test.performedAt().atZone(test.zone()).format(LOCAL),
                test.tester(),
                stored.freeAir()
                        .map(flow -> format.flow(flow, stored.relativeCombined()))
                        .orElse(""),
                isBaseline
                        ? say(locale, "pack.isBaseline")
                        : line.flatMap(history::ofBaseline)
                                .map(part -> format.percent(part.ratio(), part.standardUncertainty()))
                                .orElse(""),
                result.findings().stream()
                        .map(finding -> finding.code().name())
                        .distinct()
                        .collect(Collectors.joining(", ")),
                test.instruments().stream()
                        .map(copy -> instrument(copy, test, locale))
                        .toList(),
                standing(test, stored, correction, format, locale));
    }

    private String instrument(InstrumentCopy copy, PumpUpTest test, Locale locale) {
        LocalDate day = test.performedAt().atZone(test.zone()).toLocalDate();
        String certificate = calibrations
                .findLatest(copy.instrumentId(), day)
                .map(found -> found.certificate().certificateNumber())
                .filter(number -> !number.isEmpty())
                .orElse("–");
        return say(
                locale,
                "pack.instrument",
                copy.tag(),
                certificate,
                copy.dueOn() == null ? "–" : copy.dueOn(),
                copy.status().name());
    }

    private List<String> standing(
            PumpUpTest test,
            StoredResult stored,
            Optional<PumpUpTest> correction,
            QuantityFormat format,
            Locale locale) {
        List<String> lines = new ArrayList<>();
        if (test.supersedesId() != null) {
            lines.add(say(locale, "pack.corrects", test.supersedesId(), test.reason()));
        }
        correction.ifPresent(later -> lines.add(say(locale, "pack.superseded", later.id(), later.reason())));
        stored.restatedBy()
                .flatMap(calibrations::findById)
                .ifPresent(found -> lines.add(restated(found, stored, format, locale)));
        if (test.overrideReason() != null) {
            lines.add(say(locale, "pack.override", test.overrideReason()));
        }
        if (!stored.joinsTrend()) {
            lines.add(say(locale, "pack.outside"));
        }
        return lines;
    }

    private String restated(Calibration found, StoredResult stored, QuantityFormat format, Locale locale) {
        return say(
                locale,
                "pack.restated",
                found.instrument().facts().tag(),
                found.certificate().certificateNumber(),
                found.doneOn(),
                stored.asRecorded().map(format::flow).orElse("–"));
    }

    private String say(Locale locale, String code, Object... args) {
        Object[] texts = new Object[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = String.valueOf(args[i]);
        }
        return messages.getMessage(code, texts, locale);
    }
}
