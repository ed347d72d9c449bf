package plantair.testrecord;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Control;
import plantair.pumpup.StaticHold;
import plantair.quantity.Entered;

/**
 * What was checked around the runs, and what was copied of the motor's plate on that day.
 *
 * @param holdStart pressure at the start of the static hold
 * @param holdEnd pressure at its end
 * @param holdWait time between them
 * @param holdPlace where the air went
 * @param othersOff whether every other machine on the receiver was shut off
 * @param speedHeld whether the speed was held; for a variable-speed machine
 * @param inputPower electrical power read
 * @param voltage read
 * @param motorCurrent read, mean of the phases
 * @param powerFactor in percent
 * @param motorEfficiency in percent
 * @param motorPower copied from the plate
 * @param motorPhases copied from the plate
 * @param displacement copied from the compressor
 * @param control copied from the compressor
 * @param leakTestId the leak test that the hold was taken from; null when it was made in the test itself
 */
@Embeddable
public record TestChecks(
        @Nullable Entered holdStart,
        @Nullable Entered holdEnd,
        @Nullable Entered holdWait,
        @Enumerated(EnumType.STRING) StaticHold.@Nullable Place holdPlace,
        @Nullable Boolean othersOff,
        @Nullable Boolean speedHeld,
        @Nullable Entered inputPower,
        @Nullable Entered voltage,
        @Nullable Entered motorCurrent,
        @Nullable Entered powerFactor,
        @Nullable Entered motorEfficiency,
        @Nullable Entered motorPower,
        @Nullable Integer motorPhases,
        @Nullable Entered displacement,
        @Enumerated(EnumType.STRING) @Nullable Control control,
        @Nullable Long leakTestId) {

    /** Checks whose hold, if any, was made in the test itself. */
    public TestChecks(
            @Nullable Entered holdStart,
            @Nullable Entered holdEnd,
            @Nullable Entered holdWait,
            StaticHold.@Nullable Place holdPlace,
            @Nullable Boolean othersOff,
            @Nullable Boolean speedHeld,
            @Nullable Entered inputPower,
            @Nullable Entered voltage,
            @Nullable Entered motorCurrent,
            @Nullable Entered powerFactor,
            @Nullable Entered motorEfficiency,
            @Nullable Entered motorPower,
            @Nullable Integer motorPhases,
            @Nullable Entered displacement,
            @Nullable Control control) {
        this(
                holdStart,
                holdEnd,
                holdWait,
                holdPlace,
                othersOff,
                speedHeld,
                inputPower,
                voltage,
                motorCurrent,
                powerFactor,
                motorEfficiency,
                motorPower,
                motorPhases,
                displacement,
                control,
                null);
    }

    /** The same with the leak test that the hold was taken from. */
    public TestChecks withLeakTest(@Nullable Long leakTest) {
        return new TestChecks(
                holdStart,
                holdEnd,
                holdWait,
                holdPlace,
                othersOff,
                speedHeld,
                inputPower,
                voltage,
                motorCurrent,
                powerFactor,
                motorEfficiency,
                motorPower,
                motorPhases,
                displacement,
                control,
                leakTest);
    }

    /** Nothing checked. */
    public static final TestChecks NONE =
            new TestChecks(null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);

    /** Nothing checked, of a machine with this plate. */
    public static TestChecks of(CompressorPlate plate) {
        return new TestChecks(
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                plate.motorPower(),
                plate.motorPhases(),
                plate.displacement(),
                plate.control());
    }
}
