package plantair.testrecord.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import plantair.instrument.Calibrations;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.Histories;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.ResultText;
import plantair.testrecord.StoredResult;
import plantair.testrecord.StoredResults;
import plantair.testrecord.TestReviews;
import plantair.web.UnitSet;

/** Puts together what the page of a test shows. */
@Component
class TestViews {

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final PumpUpTests tests;
    private final TestReviews reviews;
    private final StoredResults results;
    private final Histories histories;
    private final ResultProjection projection;
    private final Calibrations calibrations;
    private final ResultText text;
    private final MessageSource messages;

    TestViews(
            PumpUpTests tests,
            TestReviews reviews,
            StoredResults results,
            Histories histories,
            ResultProjection projection,
            Calibrations calibrations,
            ResultText text,
            MessageSource messages) {
        this.text = text;
        this.calibrations = calibrations;
        this.tests = tests;
        this.reviews = reviews;
        this.results = results;
        this.histories = histories;
        this.projection = projection;
        this.messages = messages;
    }

    ResultWords words(UnitSet units, Locale locale) {
        return new ResultWords(units, messages, locale);
    }

    TestView view(PumpUpTest test, UnitSet units, Locale locale) {
        StoredResult stored = results.findByKeyTestIdAndKeyMethodVersion(test.id(), test.methodVersion())
                .orElseThrow(() -> new IllegalStateException("test " + test.id() + " has no result yet"));
        PumpUpResult result = projection.result(stored);
        ResultWords words = words(units, locale);
        MachineHistory history = histories.of(stored.compressorId());
        Optional<ResultLine> line = history.tests().stream()
                .filter(other -> other.testId() == test.id())
                .findFirst();
        return new TestView(
                test.id(),
                test.compressor().id(),
                test.compressor().tag(),
                test.compressor().site().name(),
                test.performedAt().atZone(test.zone()).format(LOCAL) + " "
                        + test.zone().getId(),
                test.tester(),
                headline(history, line, result, words),
                line.flatMap(history::judge).map(words::fit).orElse(null),
                ReadingsView.of(test, words),
                words.runs(test.runs(), result),
                LapsView.of(test, words),
                words.standardFlows(result),
                words.uncertainty(result),
                words.findings(result, text),
                words.explanations(projection.readings(test), result),
                WorkingView.of(projection.working(test), text, words),
                record(test, stored, words));
    }

    private static TestView.Headline headline(
            MachineHistory history, Optional<ResultLine> line, PumpUpResult result, ResultWords words) {
        Optional<ResultLine> baseline = history.baseline();
        String ofBaseline = line.flatMap(history::ofBaseline)
                .map(part -> words.format().percent(part.ratio(), part.standardUncertainty()))
                .orElse("");
        return words.headline(
                result,
                ofBaseline,
                baseline.map(ResultLine::testId).orElse(null),
                baseline.map(test -> test.date().toString()).orElse(""));
    }

    private TestView.Record record(PumpUpTest test, StoredResult stored, ResultWords words) {
        Optional<PumpUpTest> later = tests.findBySupersedesId(test.id());
        return new TestView.Record(
                test.recordedBy(),
                test.recordedAt().atZone(ZoneOffset.UTC).format(LOCAL) + " UTC",
                test.methodVersion(),
                test.notes(),
                test.supersedesId(),
                test.reason(),
                later.map(PumpUpTest::id).orElse(null),
                later.map(PumpUpTest::reason).orElse(null),
                test.confirmed(),
                restated(test, stored, words),
                stored.joinsTrend(),
                reviews.findByTestId(test.id()).map(ReviewMark::of).orElse(null),
                test.checks().leakTestId());
    }

    private String restated(PumpUpTest test, StoredResult stored, ResultWords words) {
        return stored.restatedBy()
                .flatMap(calibrations::findById)
                .map(calibration -> words.say(
                        "test.restated",
                        calibration.instrument().facts().tag(),
                        calibration.certificate().certificateNumber(),
                        calibration.doneOn(),
                        stored.asRecorded()
                                .map(flow -> words.format().flow(flow))
                                .orElse(words.say("test.noFlow"))))
                .orElse("");
    }
}
