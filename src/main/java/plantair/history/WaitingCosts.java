package plantair.history;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.quantity.Entered;
import plantair.testrecord.InputPower;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.NewestTests;
import plantair.testrecord.PumpUpTest;
import plantair.trend.BaselineComparison;
import plantair.trend.CostOfWaiting.Inputs;

/** Gathers what the cost of waiting depends on. */
@Service
@Transactional(readOnly = true)
public class WaitingCosts {

    private final NewestTests newestTests;

    WaitingCosts(NewestTests newestTests) {
        this.newestTests = newestTests;
    }

    /** What is known of the cost of leaving this machine as it is. */
    public WaitingCost of(Machine machine) {
        return of(
                machine,
                newestTests
                        .of(List.of(machine.history()))
                        .getOrDefault(machine.compressor().id(), List.of()));
    }

    /**
     * The same where they are known already.
     *
     * @param newest the {@link NewestTests} of the machine
     */
    public static WaitingCost of(Machine machine, List<PumpUpTest> newest) {
        var compressor = machine.compressor();
        var history = machine.history();
        Optional<BaselineComparison> line =
                history.trend().code().isDecline() ? history.lineOfBaseline() : Optional.empty();
        Optional<PumpUpTest> measured = newestWithPower(newest);
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

    private static Optional<PumpUpTest> newestWithPower(List<PumpUpTest> newest) {
        return newest.stream()
                .filter(test -> InputPower.of(test.checks()).isPresent())
                .findFirst();
    }
}
