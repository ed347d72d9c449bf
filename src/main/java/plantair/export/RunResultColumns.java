package plantair.export;

import static plantair.export.TestColumn.number;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import plantair.pumpup.WarmingFactor;

/** What each run says, as stored. */
final class RunResultColumns {

    private RunResultColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(
                        TestResultColumns.flow(
                                "run_hand_method",
                                "the run by the hand method",
                                run -> run.says().handMethod()),
                        TestResultColumns.flow(
                                "run_free_air",
                                "free air delivered in the run",
                                run -> run.says().freeAir()),
                        Stream.of(
                                warming(
                                        "run_warming_factor",
                                        "factor of the warming model that stands in for the air temperature; empty when that was read",
                                        WarmingFactor::factor),
                                warming(
                                        "run_warming_k",
                                        "rise of the air temperature in that model",
                                        WarmingFactor::warming)))
                .flatMap(columns -> columns)
                .map(TestColumn::ofRun);
    }

    private static TestColumn warming(String header, String description, ToDoubleFunction<WarmingFactor> value) {
        return number(
                header,
                description,
                run -> Optional.ofNullable(run.says().warming())
                        .map(value::applyAsDouble)
                        .orElse(null));
    }
}
