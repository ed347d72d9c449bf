package plantair.export;

import static plantair.export.TestColumn.code;
import static plantair.export.TestColumn.number;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.RatingComparison;
import plantair.pumpup.StandardFlow;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;

/** What the test says, as stored. */
final class TestResultColumns {

    private TestResultColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(flows(), FlowBasis.standards().flatMap(TestResultColumns::standard), rating(), rest())
                .flatMap(columns -> columns);
    }

    private static Stream<TestColumn> flows() {
        return Stream.of(
                        flow(
                                "hand_method",
                                "mean of the runs by the hand method, air temperature ignored",
                                run -> run.result().handMethod()),
                        flow(
                                "free_air",
                                "free air delivered; empty when the runs were not averaged",
                                run -> run.result().freeAir()),
                        flow(
                                "free_air_at_rated_speed",
                                "the same at rated speed; empty when a speed is not known",
                                run -> run.result().atRatedSpeed()),
                        Stream.of(
                                number(
                                        "relative_u_random",
                                        "relative standard uncertainty of free_air: what is new in each test",
                                        run -> run.result().uncertainty().random()),
                                number(
                                        "relative_u_shared",
                                        "the same: what tests with one receiver, gauge and way of testing share",
                                        run -> run.result().uncertainty().shared()),
                                number(
                                        "relative_u_combined",
                                        "both together",
                                        run -> run.result().uncertainty().combined()),
                                number(
                                        "spread",
                                        "highest less lowest run over the mean",
                                        run -> run.result().spread()),
                                number(
                                        "mid_pressure_pa",
                                        "gauge pressure that the flows belong to",
                                        run -> run.result().midPressure().pascals()),
                                number(
                                        "band_pa",
                                        "mean pressure rise of the runs",
                                        run -> run.result().band().pascals())))
                .flatMap(columns -> columns);
    }

    private static Stream<TestColumn> standard(FlowBasis basis) {
        String name = basis.name().toLowerCase(Locale.ROOT);
        Function<TestRun, @Nullable FlowRate> flow = run -> run.result().standardFlows().stream()
                .filter(standard -> standard.basis() == basis)
                .map(StandardFlow::flow)
                .findFirst()
                .orElse(null);
        return pair(name, "free air delivered as a standard flow", flow, run -> basis);
    }

    private static Stream<TestColumn> rating() {
        return Stream.of(
                        pair(
                                "rating_expected",
                                "rated flow at the mid pressure",
                                of(RatingComparison::expected),
                                of(RatingComparison::basis)),
                        pair(
                                "rating_measured",
                                "delivered flow on the basis of the rating",
                                of(RatingComparison::measured),
                                of(RatingComparison::basis)),
                        Stream.of(
                                number(
                                        "rating_ratio",
                                        "measured over expected; 0.95 is 95 percent",
                                        of(RatingComparison::ratio)),
                                code(
                                        "rating_reach",
                                        "how the expected flow was found: INTERPOLATED, EXTRAPOLATED or ONE_POINT",
                                        of(RatingComparison::reach)),
                                number(
                                        "rating_distance_pa",
                                        "mid pressure less the nearest rating point",
                                        of(rating -> rating.distance().pascals()))))
                .flatMap(columns -> columns);
    }

    private static Stream<TestColumn> rest() {
        return Stream.of(code(
                "findings",
                "codes of the findings, worst first, with blanks between; see docs/findings.md",
                run -> run.result().findings().stream()
                        .map(finding -> finding.code().name())
                        .collect(Collectors.joining(" "))));
    }

    private static <V> Function<TestRun, @Nullable V> of(Function<RatingComparison, V> value) {
        return run -> Optional.ofNullable(run.result().rating()).map(value).orElse(null);
    }

    /** A flow at intake conditions beside its basis. */
    static Stream<TestColumn> flow(String name, String description, Function<TestRun, @Nullable FlowRate> flow) {
        return pair(name, description, flow, run -> FlowBasis.INTAKE);
    }

    private static Stream<TestColumn> pair(
            String name,
            String description,
            Function<TestRun, @Nullable FlowRate> flow,
            Function<TestRun, @Nullable FlowBasis> basis) {
        return Stream.of(
                number(
                        name + "_m3_per_s",
                        description,
                        run -> Optional.ofNullable(flow.apply(run))
                                .map(FlowRate::cubicMetresPerSecond)
                                .orElse(null)),
                code(
                        name + "_basis",
                        "what `" + name + "_m3_per_s` refers to; empty with it",
                        run -> flow.apply(run) == null ? null : basis.apply(run)));
    }
}
