package plantair.wall;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Length;

/**
 * The wall's thickness at one place on one day.
 *
 * @param day day of the reading
 * @param thickness above zero
 * @param largestError of the instrument, either way, zero or more; null when it is not known
 */
public record WallReading(
        LocalDate day, Length thickness, @Nullable Length largestError) {

    /** @throws IllegalArgumentException when outside the range of a parameter */
    public WallReading {
        if (!(thickness.metres() > 0)) {
            throw new IllegalArgumentException("thickness must be positive: " + thickness.metres());
        }
        if (largestError != null && !(largestError.metres() >= 0)) {
            throw new IllegalArgumentException("largest error must not be negative: " + largestError.metres());
        }
    }
}
