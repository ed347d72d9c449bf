package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Explanation.Cause;
import plantair.quantity.FlowRate;
import plantair.quantity.Temperature;

/**
 * By how much each one reading alone would have to be wrong to turn the flow that was found into one that can be
 * believed. Solved with the method itself, so that evaluating again with that change gives the believable flow.
 *
 * <p>Checked by: ExplanationsTests.
 */
public final class Explanations {

    /** Receiver air further off than this is no explanation, K. */
    private static final double WARMEST_K = 150;

    private static final double COOLEST_K = 60;

    /** Kept from the ends of the range of {@link SaturationPressure}: the budget varies each reading a little, K. */
    private static final double MARGIN_K = 1;

    private final PumpUpReadings readings;
    private final ChangedReadings changed;
    private final PumpUpMethod method;
    private final double believable;
    private final double found;
    private final List<Explanation> list = new ArrayList<>();

    private Explanations(PumpUpReadings readings, PumpUpResult result, FlowRate believable) {
        this.readings = readings;
        this.changed = new ChangedReadings(readings);
        this.method = PumpUpMethods.version(result.methodVersion());
        this.believable = believable.cubicMetresPerSecond();
        this.found = mean(result);
    }

    /**
     * Every explanation that is possible.
     *
     * @param readings of the test
     * @param result of the test
     * @param believable free air delivered at the speed of the test, at intake conditions; above zero
     * @return in the order of {@link Cause}; empty when the runs were not averaged or the flow is the believable one
     * @throws IllegalArgumentException when the believable flow is not above zero
     */
    public static List<Explanation> of(PumpUpReadings readings, PumpUpResult result, FlowRate believable) {
        if (!(believable.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("believable flow must be positive: " + believable);
        }
        var explanations = new Explanations(readings, result, believable);
        if (result.freeAir() != null && explanations.found > 0) {
            explanations.solve();
        }
        return List.copyOf(explanations.list);
    }

    private void solve() {
        if (found > believable) {
            tooHigh(believable / found);
        } else if (found < believable) {
            tooLow(believable / found);
        }
    }

    private void tooHigh(double ratio) {
        double most = 1 - ratio / 3;
        boolean unknown = readings.airTemperature() == AirTemperature.NOT_MEASURED;
        add(Cause.LESS_VOLUME, Figure.Kind.VESSEL_VOLUME, most * volumeM3(), by -> changed.volume(-by));
        add(Cause.GAUGE_HIGH, Figure.Kind.PRESSURE_DIFFERENCE, most * narrowestRise(), by -> changed.ends(-by, 0, 0));
        if (unknown) {
            add(Cause.AIR_ABOVE_INTAKE, Figure.Kind.TEMPERATURE_DIFFERENCE, warmest(), changed::aboveIntake);
        } else {
            add(Cause.AIR_WARMER, Figure.Kind.TEMPERATURE_DIFFERENCE, warmest(), by -> changed.ends(0, by, 0));
        }
        add(Cause.CLOCK_SHORT, Figure.Kind.ELAPSED, 3 / ratio * longest(), by -> changed.ends(0, 0, by));
    }

    private void tooLow(double ratio) {
        add(Cause.MORE_VOLUME, Figure.Kind.VESSEL_VOLUME, 3 * ratio * volumeM3(), changed::volume);
        add(
                Cause.GAUGE_LOW,
                Figure.Kind.PRESSURE_DIFFERENCE,
                3 * ratio * narrowestRise(),
                by -> changed.ends(by, 0, 0));
        if (readings.airTemperature() != AirTemperature.NOT_MEASURED) {
            add(Cause.AIR_COOLER, Figure.Kind.TEMPERATURE_DIFFERENCE, coolest(), by -> changed.ends(0, -by, 0));
        }
        add(Cause.CLOCK_LONG, Figure.Kind.ELAPSED, (1 - 1 / (4 * ratio)) * shortest(), by -> changed.ends(0, 0, -by));
        list.add(new Explanation(Cause.LEAK, new Figure("by", Figure.Kind.FLOW, believable - found)));
    }

    /** Adds the solution between 0 and {@code most}; nothing when there is none. */
    private void add(Cause cause, Figure.Kind kind, double most, DoubleFunction<PumpUpReadings> how) {
        Root.between(0, most, by -> mean(method.evaluate(how.apply(by))) / believable - 1)
                .ifPresent(by -> list.add(new Explanation(cause, new Figure("by", kind, by))));
    }

    /** By how much every end may be warmer. */
    private double warmest() {
        double highest = SaturationPressure.HIGHEST_K - MARGIN_K;
        return Math.max(0, Math.min(WARMEST_K, highest - airAtEnds().max().orElse(highest)));
    }

    /** By how much every end may be cooler. */
    private double coolest() {
        double lowest = SaturationPressure.LOWEST_K + MARGIN_K;
        return Math.max(0, Math.min(COOLEST_K, airAtEnds().min().orElse(lowest) - lowest));
    }

    /** Of the intake as well, which stands for what was not read, K. */
    private DoubleStream airAtEnds() {
        return Stream.concat(
                        Stream.of(readings.intakeTemperature()),
                        readings.runs().stream()
                                .flatMap(run -> Stream.<@Nullable Temperature>of(run.stopAir(), run.settledAir())
                                        .filter(Objects::nonNull)))
                .mapToDouble(Temperature::kelvin);
    }

    private double volumeM3() {
        return readings.netVolume().cubicMetres();
    }

    private static double mean(PumpUpResult result) {
        return result.runs().stream()
                        .mapToDouble(run -> run.freeAir().cubicMetresPerSecond())
                        .reduce(0, Double::sum)
                / result.runs().size();
    }

    private double narrowestRise() {
        return readings.runs().stream()
                .mapToDouble(run -> changed.end(run).pascals() - run.start().pascals())
                .reduce(Double.MAX_VALUE, Math::min);
    }

    private double longest() {
        return readings.runs().stream()
                .mapToDouble(run -> run.elapsed().seconds())
                .reduce(0, Math::max);
    }

    private double shortest() {
        return readings.runs().stream()
                .mapToDouble(run -> run.elapsed().seconds())
                .reduce(Double.MAX_VALUE, Math::min);
    }
}
