package plantair.export;

import static plantair.export.TestColumn.code;
import static plantair.export.TestColumn.reading;
import static plantair.export.TestColumn.typed;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.HoldLeak;
import plantair.testrecord.TestChecks;

/** What was checked around the runs, as typed, and the leak that the static hold shows. */
final class CheckColumns {

    private CheckColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(hold(), leak(), machine(), motor(), plate()).flatMap(columns -> columns);
    }

    private static Stream<TestColumn> hold() {
        return Stream.of(
                        reading(
                                "hold_start",
                                "gauge pressure at the start of the static hold",
                                of(TestChecks::holdStart),
                                Si.GAUGE),
                        reading("hold_end", "gauge pressure at its end", of(TestChecks::holdEnd), Si.GAUGE),
                        reading("hold_wait", "time between them", of(TestChecks::holdWait), Si.TIME),
                        Stream.of(
                                code(
                                        "hold_place",
                                        "where the air of the hold went: TEST_VOLUME or CHECK_VALVE",
                                        of(TestChecks::holdPlace)),
                                code(
                                        "leak_test_id",
                                        "number of the leak test that the hold was taken from, in leak_tests.csv",
                                        of(TestChecks::leakTestId))))
                .flatMap(columns -> columns);
    }

    private static Stream<TestColumn> leak() {
        return Stream.of(
                        TestResultColumns.flow(
                                "leak_at_hold",
                                "leak at the mean pressure of the hold, as free air; below zero when it rose",
                                run -> leak(run, HoldLeak::atHold)),
                        TestResultColumns.flow(
                                "leak_in_runs",
                                "the same at the mid pressure of the runs",
                                run -> leak(run, HoldLeak::inRuns)),
                        Stream.of(code(
                                "leak_added",
                                "true when the leak is added to the delivered flow",
                                run -> leak(run, HoldLeak::added))))
                .flatMap(columns -> columns);
    }

    private static Stream<TestColumn> machine() {
        return Stream.of(
                code(
                        "others_off",
                        "true when every other machine on the receiver was shut off; empty when not said",
                        of(TestChecks::othersOff)),
                code(
                        "speed_held",
                        "true when the speed of a variable-speed machine was held; empty when not said",
                        of(TestChecks::speedHeld)));
    }

    private static Stream<TestColumn> motor() {
        return Stream.of(
                        reading("input_power", "electrical power read", of(TestChecks::inputPower), Si.POWER),
                        typed("voltage", "voltage read", of(TestChecks::voltage)),
                        typed("motor_current", "motor current read, mean of the phases", of(TestChecks::motorCurrent)),
                        typed("power_factor", "power factor in percent", of(TestChecks::powerFactor)),
                        typed(
                                "motor_efficiency",
                                "efficiency of the motor in percent",
                                of(TestChecks::motorEfficiency)))
                .flatMap(columns -> columns);
    }

    private static Stream<TestColumn> plate() {
        return Stream.of(
                        reading(
                                "motor_power",
                                "motor power, copied from the plate",
                                of(TestChecks::motorPower),
                                Si.POWER),
                        Stream.of(code(
                                "motor_phases",
                                "phases of the motor, copied from the plate",
                                of(TestChecks::motorPhases))),
                        reading(
                                "displacement",
                                "displacement, copied from the plate",
                                of(TestChecks::displacement),
                                Si.FLOW),
                        Stream.of(code(
                                "control",
                                "how the machine is controlled, copied from the plate",
                                of(TestChecks::control))))
                .flatMap(columns -> columns);
    }

    private static <V> Function<TestRun, @Nullable V> of(Function<TestChecks, @Nullable V> value) {
        return run -> value.apply(run.test().checks());
    }

    private static <V> @Nullable V leak(TestRun run, Function<HoldLeak, V> value) {
        return Optional.ofNullable(run.result().leak()).map(value).orElse(null);
    }
}
