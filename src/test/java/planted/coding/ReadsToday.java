package planted.coding;

import java.time.LocalDate;
import java.time.ZoneOffset;

/** The time of day without an injected clock. */
public class ReadsToday {

    LocalDate today() {
        return LocalDate.now(ZoneOffset.UTC);
    }
}
