package plantair.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plantair.demo.Occasion.Trouble;
import plantair.pumpup.AirTemperature;
import plantair.quantity.FlowRate;
import plantair.testing.OnH2;
import plantair.testrecord.StoredResult;

/**
 * The method against the simulation, which fills its tanks by an energy balance with gas and vapour data from other sources
 * and knows the flow that was really delivered.
 */
@OnH2
final class MethodAgreementTests extends LoadedDemoPlant {

    private static final double COVERAGE_FACTOR = 2;

    private static Stream<Machine> machinesWithMeasuredAir() {
        return Stream.of(Machines.C01, Machines.C02, Machines.C03, Machines.C12);
    }

    @Test
    void findsTheTrueFlowWithinItsUncertaintyNineteenTimesInTwenty() {
        List<DemoTest> sound = TRUTH.stream()
                .filter(test -> isSound(test) && !isOf(Machines.C11, test))
                .toList();
        long within = sound.stream().filter(this::isWithinUncertainty).count();

        assertThat(sound).hasSizeGreaterThan(95);
        assertThat((double) within / sound.size()).isGreaterThanOrEqualTo(0.95);
    }

    @Test
    void findsTheTrueFlowWithinItsUncertaintyWhereTheAirIsNotMeasured() {
        assertThat(TRUTH)
                .filteredOn(test -> test.draft().conditions().airTemperature() == AirTemperature.NOT_MEASURED)
                .hasSizeGreaterThan(20)
                .allMatch(this::isWithinUncertainty);
    }

    /** Wrong gauges and volumes taken out, little may remain; leaving out humidity or compressibility would be more. */
    @ParameterizedTest
    @MethodSource("machinesWithMeasuredAir")
    void hasNoErrorOfItsOwn(Machine machine) {
        double remaining = TRUTH.stream()
                .filter(test -> isSound(test) && isOf(machine, test))
                .mapToDouble(test -> recorded(test) / test.trueFlow() / instrumentError(machine, test) - 1)
                .average()
                .orElseThrow();

        assertThat(remaining).isBetween(-0.0025, 0.0025);
    }

    /** What the water hides: the wet tank is beyond its uncertainty. */
    @Test
    void doesNotFindTheTrueFlowOfAWetTank() {
        assertThat(TRUTH)
                .filteredOn(test -> test.trouble() == Trouble.WATER)
                .hasSize(1)
                .noneMatch(this::isWithinUncertainty);
    }

    private boolean isWithinUncertainty(DemoTest test) {
        StoredResult result = result(test);
        double u = StrictMath.hypot(result.relativeRandom(), result.relativeShared());
        return Math.abs(delivered(test) / test.trueFlow() - 1) <= COVERAGE_FACTOR * u;
    }

    private double delivered(DemoTest test) {
        return result(test).freeAir().orElseThrow().cubicMetresPerSecond();
    }

    /** With the error of the gauge still in it. */
    private double recorded(DemoTest test) {
        return result(test).asRecorded().map(FlowRate::cubicMetresPerSecond).orElseGet(() -> delivered(test));
    }

    private static double instrumentError(Machine machine, DemoTest test) {
        LocalDate day = LocalDate.ofInstant(
                test.draft().performedAt(),
                test.draft().compressor().site().facts().zoneId());
        return (1 + machine.gauge().apply(day).error()) / machine.trueVolume();
    }

    private static boolean isSound(DemoTest test) {
        return test.trouble() == Trouble.NONE;
    }

    private static boolean isOf(Machine machine, DemoTest test) {
        return test.draft().compressor().tag().equals(machine.tag());
    }
}
