package plantair.cost;

import java.util.Optional;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/** The fields of a form for hours a year and tariff, both of which may be left to what is known. */
public final class YearFields {

    /** All hours of a year of 365 days. */
    public static final double ALL_YEAR = 8760;

    private static final double MOST = 8784;

    private YearFields() {}

    /** Hours in a year. */
    public static Optional<Entered> hours(FieldChecks checks, EnteredField field) {
        return checks.within(
                "hours",
                checks.positive("hours", checks.optional("hours", field, FixedUnit.HOUR)),
                typed -> typed.value() <= MOST,
                "cost.hours.tooMany");
    }

    /** Money for a kilowatt hour. */
    public static Optional<Entered> tariff(FieldChecks checks, EnteredField field) {
        return checks.positive("tariff", checks.optional("tariff", field, FixedUnit.PER_KILOWATT_HOUR));
    }
}
