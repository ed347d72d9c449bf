package plantair.pumpup;

import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Length;

/**
 * Where the station pressure comes from (M3): a barometer read in the test wins over the site's usual one, and that over
 * the elevation.
 *
 * @param read barometer read in the test; null when not read
 * @param usual normal barometer of the site; null when not known
 * @param elevation of the site; null when not known
 */
public record Station(
        @Nullable AbsolutePressure read,
        @Nullable AbsolutePressure usual,
        @Nullable Length elevation) {

    /** Weather moves a station pressure by about 3 % at most; common practice, no source. */
    private static final double WEATHER = 0.04;

    /** @throws IllegalArgumentException when nothing is known */
    public Station {
        if (read == null && usual == null && elevation == null) {
            throw new IllegalArgumentException("station needs a barometer or an elevation");
        }
    }

    /** The pressure to use. */
    public AbsolutePressure pressure() {
        return read == null ? expected() : read;
    }

    /** The pressure that the site leads to expect; the reading itself when the site says nothing. */
    public AbsolutePressure expected() {
        if (usual != null) {
            return usual;
        }
        return elevation == null ? read : StandardAtmosphere.stationPressure(elevation);
    }

    /** True when the pressure stands for the elevation, so that M3 belongs in the working. */
    public boolean isFromElevation() {
        return read == null && usual == null;
    }

    /** True when the reading is further from the expected pressure than weather goes, as one reduced to sea level is. */
    public boolean isSuspect() {
        return Math.abs(pressure().pascals() / expected().pascals() - 1) > WEATHER;
    }
}
