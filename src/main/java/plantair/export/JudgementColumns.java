package plantair.export;

import static plantair.export.TestColumn.code;
import static plantair.export.TestColumn.number;
import static plantair.export.TestColumn.text;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Efficiency;
import plantair.pumpup.NameplateVerdict;
import plantair.quantity.Power;
import plantair.testrecord.LearnedCopy;

/** How far the result can be believed, and what it was before its gauge was found wrong. */
final class JudgementColumns {

    private JudgementColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(verdict(), efficiency(), standing()).flatMap(columns -> columns);
    }

    private static Stream<TestColumn> verdict() {
        return Stream.of(
                code(
                        "verdict",
                        "whether it meets the rating: MEETS, DOES_NOT_MEET or CANNOT_BE_TOLD",
                        verdict(NameplateVerdict::verdict)),
                number(
                        "verdict_tolerance",
                        "tolerance of the rating as a part of it; 0.05 is 5 percent",
                        verdict(NameplateVerdict::tolerance)),
                number(
                        "verdict_probability",
                        "probability that the true flow lies above the rating less that tolerance",
                        verdict(NameplateVerdict::probability)));
    }

    private static Stream<TestColumn> efficiency() {
        return Stream.of(
                number(
                        "least_power_w",
                        "isentropic power for the flow",
                        efficiency(efficiency -> efficiency.leastPower().watts())),
                number(
                        "shaft_power_w",
                        "shaft power from the motor readings, else that of the plate",
                        efficiency(efficiency -> watts(efficiency.shaftPower()))),
                code(
                        "shaft_power_from_plate",
                        "true when `shaft_power_w` is that of the plate",
                        efficiency(efficiency -> efficiency.shaftPower() == null ? null : efficiency.fromPlate())),
                number(
                        "isentropic_efficiency",
                        "least power over shaft power; 0.7 is 70 percent",
                        efficiency(Efficiency::isentropic)),
                number(
                        "volumetric_efficiency",
                        "free air delivered over displacement; 0.8 is 80 percent",
                        efficiency(Efficiency::volumetric)));
    }

    private static Stream<TestColumn> standing() {
        return Stream.of(
                        Stream.of(code(
                                "joins_trend",
                                "false when the test does not show the wear of the machine and is kept from its line",
                                run -> run.stored().joinsTrend())),
                        TestResultColumns.flow(
                                "as_recorded_free_air",
                                "free air delivered before the gauge was found wrong; empty when it was not",
                                run -> run.stored().asRecorded().orElse(null)),
                        Stream.of(
                                number(
                                        "learned_factor",
                                        "warming factor that the machine had shown before; copied when recorded",
                                        learned(LearnedCopy::learnedFactor)),
                                number(
                                        "learned_uncertainty",
                                        "its relative standard uncertainty",
                                        learned(LearnedCopy::learnedUncertainty)),
                                code("learned_from", "number of tests behind it", learned(LearnedCopy::learnedFrom)),
                                code(
                                        "restated_by",
                                        "number of the calibration that restates the result; empty when none does",
                                        run -> run.stored().restatedBy().orElse(null)),
                                text(
                                        "restated_by_certificate",
                                        "number of its certificate, as typed",
                                        TestRun::certificate)))
                .flatMap(columns -> columns);
    }

    private static <V> Function<TestRun, @Nullable V> learned(Function<LearnedCopy, V> value) {
        return run -> Optional.ofNullable(run.test().learned()).map(value).orElse(null);
    }

    private static @Nullable Double watts(@Nullable Power power) {
        return power == null ? null : power.watts();
    }

    private static <V> Function<TestRun, @Nullable V> verdict(Function<NameplateVerdict, V> value) {
        return run -> Optional.ofNullable(run.result().verdict()).map(value).orElse(null);
    }

    private static <V> Function<TestRun, @Nullable V> efficiency(Function<Efficiency, @Nullable V> value) {
        return run -> Optional.ofNullable(run.result().efficiency()).map(value).orElse(null);
    }
}
