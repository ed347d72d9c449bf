package plantair.pumpup;

import java.util.Objects;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.VesselVolume;

/**
 * What a test is to be planned for.
 *
 * @param volume net volume to be filled, above zero
 * @param volumeU relative standard uncertainty of it
 * @param instruments with what it will be read; the gauge must be named
 * @param expected free air that the machine is thought to deliver, above zero
 * @param stop where the clock stops
 * @param step between the start pressures to look at, above zero; doubled where that would make too many
 * @param intake the air it will take in
 */
public record PlanSetup(
        VesselVolume volume,
        double volumeU,
        Instruments instruments,
        FlowRate expected,
        GaugePressure stop,
        PressureDifference step,
        Intake intake) {

    /** @throws IllegalArgumentException when something is outside its range or the gauge is not named */
    public PlanSetup {
        if (!(volume.cubicMetres() > 0 && expected.cubicMetresPerSecond() > 0 && volumeU >= 0)) {
            throw new IllegalArgumentException("volume and flow must be positive: " + volume + ", " + expected);
        }
        if (!(stop.pascals() > 0 && step.pascals() > 0)) {
            throw new IllegalArgumentException("stop and step must be positive: " + stop + ", " + step);
        }
        if (instruments.gauge() == null) {
            throw new IllegalArgumentException("gauge must be named");
        }
    }

    /** The gauge. */
    public GaugeAccuracy gauge() {
        return Objects.requireNonNull(instruments.gauge());
    }

    /** The same with another gauge. */
    public PlanSetup with(GaugeAccuracy gauge) {
        var others = new Instruments(gauge, instruments.clockU(), instruments.thermometerU(), instruments.barometerU());
        return new PlanSetup(volume, volumeU, others, expected, stop, step, intake);
    }
}
