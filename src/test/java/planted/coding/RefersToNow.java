package planted.coding;

import java.time.Instant;
import java.util.function.Supplier;

/** The time of day through a method reference. */
public class RefersToNow {

    Supplier<Instant> now = Instant::now;
}
