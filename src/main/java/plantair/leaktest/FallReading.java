package plantair.leaktest;

import jakarta.persistence.Embeddable;
import java.util.Optional;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;

/**
 * A pressure of a shut volume, as typed.
 *
 * @param atTime time from the first reading, or from the stop of the machine
 * @param pressure gauge pressure
 */
@Embeddable
public record FallReading(Entered atTime, Entered pressure) {

    /** Whether there is a time above zero. */
    public static boolean isSome(Optional<Entered> time) {
        return time.isPresent() && seconds(time.get()) > 0;
    }

    /** A time that may be zero, s. */
    public static double seconds(Entered time) {
        return time.value() == 0 ? 0 : Elapsed.of(time).seconds();
    }
}
