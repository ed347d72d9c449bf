package plantair.history;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.testrecord.Histories;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.testrecord.ResultProjection;
import plantair.trend.Limits;
import plantair.trend.Standing;

/** Finds whether output is down, and what to look at then. */
@Service
@Transactional(readOnly = true)
public class CheckLists {

    private final Histories histories;
    private final PumpUpTests tests;
    private final ResultProjection projection;
    private final SiteLimits siteLimits;

    CheckLists(Histories histories, PumpUpTests tests, ResultProjection projection, SiteLimits siteLimits) {
        this.histories = histories;
        this.tests = tests;
        this.projection = projection;
        this.siteLimits = siteLimits;
    }

    /** What to look at after the last test of a machine; empty while its output is not down. */
    public List<Check> ofMachine(long compressorId) {
        MachineHistory history = histories.of(compressorId);
        return history.last().map(last -> ofTest(history, last)).orElse(List.of());
    }

    /** What to look at after a test; empty when it was corrected, or shows no loss. */
    public List<Check> ofTest(long compressorId, long testId) {
        MachineHistory history = histories.of(compressorId);
        return history.tests().stream()
                .filter(line -> line.testId() == testId)
                .findFirst()
                .map(line -> ofTest(history, line))
                .orElse(List.of());
    }

    private List<Check> ofTest(MachineHistory history, ResultLine line) {
        PumpUpTest test = tests.findById(line.testId()).orElseThrow();
        Compressor compressor = test.compressor();
        Limits limits = siteLimits.of(compressor.site()).limits();
        if (!isDown(history, line, limits)) {
            return List.of();
        }
        var result = projection.results(List.of(line.testId())).get(line.testId());
        return Checks.of(compressor.plate(), Checks.Observed.of(test, result));
    }

    /** Below the first limit by itself; or the last one of a machine that is below it by its tests together. */
    private static boolean isDown(MachineHistory history, ResultLine line, Limits limits) {
        boolean low = history.ofBaseline(line)
                .map(part -> Standing.of(limits, List.of(part), null))
                .filter(alone -> alone != Standing.OK)
                .isPresent();
        if (low || !history.last().equals(Optional.of(line))) {
            return low;
        }
        Standing standing = history.standing(limits);
        return standing.isCrossed() || standing == Standing.REPEAT;
    }
}
