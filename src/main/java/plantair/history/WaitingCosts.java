package plantair.history;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.quantity.Entered;
import plantair.testrecord.InputPower;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.trend.BaselineComparison;
import plantair.trend.CostOfWaiting.Inputs;

/** Gathers what the cost of waiting depends on. */
@Service
@Transactional(readOnly = true)
public class WaitingCosts {

    /** Older readings of power say little of today. */
    private static final int NEWEST = 40;

    private final PumpUpTests tests;

    WaitingCosts(PumpUpTests tests) {
        this.tests = tests;
    }

    /** What is known of the cost of leaving this machine as it is. */
    public WaitingCost of(Machine machine) {
        var compressor = machine.compressor();
        var history = machine.history();
        Optional<BaselineComparison> line =
                history.trend().code().isDecline() ? history.lineOfBaseline() : Optional.empty();
        Optional<PumpUpTest> measured = newestWithPower(compressor.id(), history);
        var inputs = new Inputs(
                value(compressor.plate().loadedHours()),
                measured.flatMap(test -> InputPower.of(test.checks())).orElse(null),
                value(compressor.site().facts().tariff()));
        return new WaitingCost(
                compressor.id(),
                compressor.site().id(),
                compressor.site().facts(),
                line.or(() -> lastOfBaseline(history)).orElse(null),
                line.isPresent(),
                inputs,
                measured.map(test -> test.performedAt().atZone(test.zone()).toLocalDate())
                        .orElse(null));
    }

    private static @Nullable Double value(@Nullable Entered typed) {
        return typed == null ? null : typed.value();
    }

    private static Optional<BaselineComparison> lastOfBaseline(MachineHistory history) {
        return history.tests().stream()
                .map(history::ofBaseline)
                .flatMap(Optional::stream)
                .reduce((before, last) -> last);
    }

    private Optional<PumpUpTest> newestWithPower(long compressorId, MachineHistory history) {
        Set<Long> current = history.tests().stream().map(ResultLine::testId).collect(Collectors.toSet());
        return tests.findByCompressorIdOrderByPerformedAtDescIdDesc(compressorId, PageRequest.of(0, NEWEST)).stream()
                .filter(test -> current.contains(test.id()))
                .filter(test -> InputPower.of(test.checks()).isPresent())
                .findFirst();
    }
}
