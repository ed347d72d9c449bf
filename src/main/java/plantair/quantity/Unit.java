package plantair.quantity;

import java.util.List;
import java.util.Optional;

/** A unit in which a reading may be typed or shown. Catalogue: docs/units.md. */
public interface Unit {

    /** The code in records, CSV and the API: UCUM, except {@link DurationUnit#MINUTES_SECONDS}. */
    String code();

    /** What people write beside the number. */
    String symbol();

    /** Every unit of the catalogue, by quantity. */
    static List<Unit> all() {
        return UnitCatalogue.ALL;
    }

    /** The unit with this code; empty when the catalogue has none. */
    static Optional<Unit> byCode(String code) {
        return Optional.ofNullable(UnitCatalogue.BY_CODE.get(code));
    }
}
