package plantair.runlog;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.pumpup.GaugeAccuracy;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.TimedFill;
import plantair.pumpup.TimedPressure;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.Lap;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.RunEntry;

/** The fills with many readings of a test: its runs with laps, and what loggers saw of it. */
@Service
public class RunCurves {

    private final LoggedRuns runs;
    private final LogFiles files;
    private final PumpUpTests tests;
    private final ResultProjection projection;

    RunCurves(LoggedRuns runs, LogFiles files, PumpUpTests tests, ResultProjection projection) {
        this.runs = runs;
        this.files = files;
        this.tests = tests;
        this.projection = projection;
    }

    /**
     * One fill.
     *
     * @param run number of the run with laps; zero for a log
     * @param log the logged run; null for laps
     * @param fill its readings
     */
    public record Curve(int run, @Nullable LoggedRun log, TimedFill fill) {}

    /** Of the test, laps first; empty when it has neither laps nor a log. */
    public List<Curve> of(PumpUpTest test) {
        PumpUpReadings readings = projection.readings(test);
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < test.runs().size(); i++) {
            RunEntry run = test.runs().get(i);
            if (run.laps() != null) {
                curves.add(new Curve(
                        i + 1, null, TimedFill.ofRun(readings, readings.runs().get(i), marks(run))));
            }
        }
        for (LoggedRun log : runs.findStanding(idsOf(test))) {
            List<TimedPressure> points =
                    files.read(log, ResultProjection.stationPressure(test)).points();
            curves.add(new Curve(0, log, TimedFill.ofLog(readings, points, accuracy(log.logger()))));
        }
        return curves;
    }

    /** The runs of a test as typed. */
    @Transactional(readOnly = true)
    public List<RunEntry> runsOf(long testId) {
        return tests.findById(testId).map(PumpUpTest::runs).orElse(List.of());
    }

    /** Its number and those of the tests that it corrects: what was logged of them was logged of it. */
    public Set<Long> idsOf(PumpUpTest test) {
        Set<Long> ids = new LinkedHashSet<>(List.of(test.id()));
        Optional<PumpUpTest> old = before(test);
        while (old.isPresent() && ids.add(old.get().id())) {
            old = before(old.get());
        }
        return ids;
    }

    private Optional<PumpUpTest> before(PumpUpTest test) {
        return Optional.ofNullable(test.supersedesId()).flatMap(tests::findById);
    }

    private static @Nullable GaugeAccuracy accuracy(@Nullable InstrumentCopy logger) {
        return logger == null ? null : logger.gaugeAccuracy(List.of()).orElse(null);
    }

    private static List<TimedPressure> marks(RunEntry run) {
        Stream<Lap> passed = Stream.concat(
                run.laps() == null ? Stream.empty() : run.laps().marks().stream(),
                Stream.of(new Lap(run.stopPressure(), run.elapsed())));
        return Stream.concat(
                        Stream.of(new TimedPressure(0, GaugePressure.of(run.startPressure()))),
                        passed.map(lap ->
                                new TimedPressure(Elapsed.of(lap.at()).seconds(), GaugePressure.of(lap.pressure()))))
                .toList();
    }
}
