package plantair.testrecord;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Control;
import plantair.instrument.AsFound;
import plantair.instrument.InstrumentKind;
import plantair.pumpup.Circumstances;
import plantair.pumpup.Instruments;
import plantair.pumpup.LearnedFactor;
import plantair.pumpup.MachineData;
import plantair.pumpup.MotorInput;
import plantair.pumpup.StaticHold;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Power;
import plantair.quantity.PressureDifference;
import plantair.quantity.TemperatureDifference;

/** From what was typed and copied around the runs to what the method takes. Computes nothing. */
final class CircumstancesOf {

    private CircumstancesOf() {}

    static Circumstances of(
            TestChecks checks,
            List<InstrumentCopy> instruments,
            List<AsFound> errors,
            @Nullable LearnedFactor learned) {
        return new Circumstances(instruments(instruments, errors), hold(checks), machine(checks), learned);
    }

    private static Instruments instruments(List<InstrumentCopy> copies, List<AsFound> errors) {
        return Instruments.of(
                copy(copies, InstrumentKind.GAUGE)
                        .flatMap(copy -> copy.gaugeAccuracy(errors))
                        .orElse(null),
                limit(
                        copies,
                        InstrumentKind.TIMER,
                        entered -> Elapsed.of(entered).seconds()),
                limit(
                        copies,
                        InstrumentKind.THERMOMETER,
                        entered -> TemperatureDifference.of(entered).kelvin()),
                limit(
                        copies,
                        InstrumentKind.BAROMETER,
                        entered -> PressureDifference.of(entered).pascals()));
    }

    private static Optional<InstrumentCopy> copy(List<InstrumentCopy> copies, InstrumentKind kind) {
        return copies.stream().filter(copy -> copy.kind() == kind).findFirst();
    }

    private static @Nullable Double limit(
            List<InstrumentCopy> copies, InstrumentKind kind, Function<Entered, Double> si) {
        return copy(copies, kind)
                .flatMap(copy -> Optional.ofNullable(copy.accuracy()))
                .map(si)
                .orElse(null);
    }

    private static @Nullable StaticHold hold(TestChecks checks) {
        if (checks.holdStart() == null || checks.holdEnd() == null || checks.holdWait() == null) {
            return null;
        }
        return new StaticHold(
                GaugePressure.of(checks.holdStart()),
                GaugePressure.of(checks.holdEnd()),
                Elapsed.of(checks.holdWait()),
                checks.holdPlace() == null ? StaticHold.Place.TEST_VOLUME : checks.holdPlace());
    }

    private static MachineData machine(TestChecks checks) {
        boolean speedFree = checks.control() == Control.VARIABLE_SPEED && !Boolean.TRUE.equals(checks.speedHeld());
        return new MachineData(
                checks.displacement() == null ? null : FlowRate.of(checks.displacement()),
                checks.motorPower() == null ? null : Power.of(checks.motorPower()),
                shaftPower(checks),
                speedFree,
                checks.othersOff());
    }

    /** From power or current as read; what was not read of power factor and efficiency is taken as 1, an upper bound. */
    private static @Nullable Power shaftPower(TestChecks checks) {
        double efficiency = part(checks.motorEfficiency());
        if (checks.inputPower() != null) {
            return MotorInput.shaft(Power.of(checks.inputPower()), efficiency);
        }
        if (checks.voltage() == null || checks.motorCurrent() == null || checks.motorPhases() == null) {
            return null;
        }
        Power input = MotorInput.electrical(
                checks.voltage().value(),
                checks.motorCurrent().value(),
                checks.motorPhases(),
                part(checks.powerFactor()));
        return MotorInput.shaft(input, efficiency);
    }

    private static double part(@Nullable Entered percent) {
        return percent == null ? 1 : percent.part();
    }
}
