package plantair.history;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.history.PassByCard.Obstacle;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.Temperature;
import plantair.testrecord.Histories;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.RunEntry;
import plantair.trend.Limits;
import plantair.trend.PassByTime;
import plantair.web.NoSuchRecord;

/** Makes the card of a machine from its baseline test. */
@Service
@Transactional(readOnly = true)
public class PassByCards {

    /** Of the rise; further off the time does not grow in proportion. Our own choice. */
    private static final double MOST_PART_OFF = 0.05;

    private final Compressors compressors;
    private final Histories histories;
    private final PumpUpTests tests;
    private final SiteLimits limits;
    private final Clock clock;

    PassByCards(Compressors compressors, Histories histories, PumpUpTests tests, SiteLimits limits, Clock clock) {
        this.compressors = compressors;
        this.histories = histories;
        this.tests = tests;
        this.limits = limits;
        this.clock = clock;
    }

    /**
     * The card of a machine.
     *
     * @throws NoSuchRecord when there is none of that id
     */
    public PassByCard of(long compressorId) {
        Compressor compressor = compressors
                .findWithSiteById(compressorId)
                .orElseThrow(() -> new NoSuchRecord("compressor " + compressorId));
        MachineHistory history = histories.of(compressorId);
        ResultLine line = history.baseline().orElse(null);
        if (line == null) {
            return without(compressor, Obstacle.NO_BASELINE);
        }
        PumpUpTest baseline = tests.findById(line.testId()).orElseThrow();
        List<RunEntry> runs = baseline.runs();
        if (line.isRestated()) {
            return without(compressor, Obstacle.GAUGE_FOUND_WRONG);
        }
        return runs.stream().allMatch(run -> isNearMarks(run, runs.get(0)))
                ? card(compressor, baseline, isOtherGauge(history, line))
                : without(compressor, Obstacle.MARKS_DIFFER);
    }

    private static boolean isOtherGauge(MachineHistory history, ResultLine baseline) {
        return history.last()
                .filter(last ->
                        !Objects.equals(last.marks().gaugeId(), baseline.marks().gaugeId()))
                .isPresent();
    }

    private PassByCard card(Compressor compressor, PumpUpTest baseline, boolean gaugeChanged) {
        baseline.instruments().size(); // read while the transaction is open
        RunEntry first = baseline.runs().get(0);
        AbsolutePressure station = ResultProjection.stationPressure(baseline);
        return new PassByCard(
                compressor,
                null,
                baseline,
                gaugeChanged,
                baseline.volumes(),
                PassByTime.of(baseline.runs().stream().map(PassByCards::run).toList(), rise(first), limits(compressor)),
                PassByTime.shorterPerKelvin(
                        GaugePressure.of(first.startPressure()).above(station),
                        GaugePressure.of(first.stopPressure()).above(station),
                        Temperature.of(baseline.conditions().intakeTemperature())),
                station,
                limits(compressor),
                today(compressor));
    }

    private PassByCard without(Compressor compressor, @Nullable Obstacle obstacle) {
        return new PassByCard(
                compressor, obstacle, null, false, List.of(), null, 0, null, limits(compressor), today(compressor));
    }

    private LocalDate today(Compressor compressor) {
        return LocalDate.now(clock.withZone(compressor.site().facts().zoneId()));
    }

    private Limits limits(Compressor compressor) {
        return limits.of(compressor.site()).limits();
    }

    /** The marks of the card are those of the first run; a tester stops by hand, a division or so off. */
    private static boolean isNearMarks(RunEntry run, RunEntry first) {
        double most = MOST_PART_OFF * rise(first).pascals();
        return isWithin(most, GaugePressure.of(run.startPressure()), GaugePressure.of(first.startPressure()))
                && isWithin(most, GaugePressure.of(run.stopPressure()), GaugePressure.of(first.stopPressure()));
    }

    private static boolean isWithin(double most, GaugePressure one, GaugePressure other) {
        return Math.abs(one.pascals() - other.pascals()) <= most;
    }

    private static PassByTime.Run run(RunEntry run) {
        return new PassByTime.Run(Elapsed.of(run.elapsed()), rise(run));
    }

    private static PressureDifference rise(RunEntry run) {
        return GaugePressure.of(run.stopPressure()).minus(GaugePressure.of(run.startPressure()));
    }
}
