package plantair.leak;

import java.util.List;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.VolumePart;
import plantair.quantity.VesselVolume;

/**
 * A volume that is shut while its pressure falls.
 *
 * @param volume above zero
 * @param relativeU relative standard uncertainty of it, zero or more
 */
public record ShutAir(VesselVolume volume, double relativeU) {

    /** @throws IllegalArgumentException when outside the range of a parameter */
    public ShutAir {
        if (!(volume.cubicMetres() > 0 && relativeU >= 0 && relativeU <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("no shut volume: " + volume + ", " + relativeU);
        }
    }

    /**
     * The sum of some pieces (M2); each is wrong by itself, as in M20.
     *
     * @throws IllegalArgumentException when they hold no air
     */
    public static ShutAir of(List<VolumePart> parts) {
        VesselVolume net = PumpUpReadings.netVolume(parts);
        double squares = 0;
        for (VolumePart part : parts) {
            double u = part.relativeU() * part.volume().cubicMetres();
            squares += u * u;
        }
        return new ShutAir(net, StrictMath.sqrt(squares) / net.cubicMetres());
    }
}
