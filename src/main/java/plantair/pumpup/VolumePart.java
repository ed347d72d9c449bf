package plantair.pumpup;

import plantair.quantity.Length;
import plantair.quantity.VesselVolume;

/**
 * One piece of the volume between the compressor's check valve and the shut valve.
 *
 * @param label how the plant calls it
 * @param kind whether it adds to the gas volume or takes from it
 * @param volume its size
 * @param relativeU relative standard uncertainty of the size
 */
public record VolumePart(String label, Kind kind, VesselVolume volume, double relativeU) {

    /** Standard uncertainty of a volume from a plate: ± 2 %, all alike likely. Our own default. */
    public static final double PLATE_U = 0.02 / StrictMath.sqrt(3);

    /** Standard uncertainty of a volume found by filling with water. Our own default. */
    public static final double WATER_FILL_U = 0.003;

    /** Standard uncertainty of a guessed volume: ± 10 %, all alike likely. Our own default. */
    public static final double GUESS_U = 0.1 / StrictMath.sqrt(3);

    /** A piece whose volume is from a plate. */
    public VolumePart(String label, Kind kind, VesselVolume volume) {
        this(label, kind, volume, PLATE_U);
    }

    /** What a piece of volume is. */
    public enum Kind {
        /** A receiver; adds. */
        RECEIVER,
        /** A length of pipe, a cooler, a dryer; adds. */
        PIPE,
        /** Liquid water left inside; takes away. */
        WATER
    }

    /**
     * Volume of a length of pipe: π d² L / 4 (M2).
     *
     * @throws IllegalArgumentException when a length is below zero
     */
    public static VesselVolume ofPipe(Length length, Length bore) {
        if (bore.metres() < 0) {
            throw new IllegalArgumentException("bore must not be negative: " + bore);
        }
        return new VesselVolume(Math.PI / 4 * bore.metres() * bore.metres() * length.metres());
    }

    /** The volume with its sign, m³. */
    double signedM3() {
        return kind == Kind.WATER ? -volume.cubicMetres() : volume.cubicMetres();
    }
}
