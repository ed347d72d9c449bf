package planted.quantity;

import java.time.Clock;
import java.time.LocalDate;

/** A pure class that reads a clock, even an injected one. */
public class ReadsClock {

    LocalDate today(Clock clock) {
        return LocalDate.now(clock);
    }
}
