package plantair.testrecord;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import plantair.quantity.Power;

/** Tells what machines were measured to take for what they deliver. */
public final class MeasuredPowers {

    private MeasuredPowers() {}

    /**
     * By the newest test of a compressor that joins the trend and read its input power; empty when there is none.
     *
     * @param history of the compressor
     * @param newest its {@link NewestTests}
     */
    public static Optional<MeasuredPower> of(MachineHistory history, List<PumpUpTest> newest) {
        Map<Long, ResultLine> lines = history.tests().stream()
                .filter(line -> line.joinsTrend() && line.freeAir().isPresent())
                .collect(Collectors.toMap(ResultLine::testId, Function.identity()));
        return newest.stream()
                .filter(test -> lines.containsKey(test.id()))
                .flatMap(test -> InputPower.of(test.checks()).filter(MeasuredPowers::isPower).stream()
                        .map(input -> new MeasuredPower(MeasuredOutput.of(lines.get(test.id())), input)))
                .filter(measured -> measured.output().flow().cubicMetresPerSecond() > 0)
                .findFirst();
    }

    private static boolean isPower(Power input) {
        return input.watts() > 0;
    }
}
