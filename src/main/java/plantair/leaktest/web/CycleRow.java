package plantair.leaktest.web;

import plantair.leaktest.CycleEntry;
import plantair.quantity.DurationUnit;
import plantair.web.EnteredField;

/** One cycle as a person types it. */
final class CycleRow {

    private EnteredField loaded = EnteredField.blank(DurationUnit.SECOND);
    private EnteredField unloaded = EnteredField.blank(DurationUnit.SECOND);
    private EnteredField standing = EnteredField.blank(DurationUnit.SECOND);

    static CycleRow from(CycleEntry cycle) {
        var row = new CycleRow();
        row.loaded = EnteredField.of(cycle.loaded(), DurationUnit.SECOND);
        row.unloaded = EnteredField.of(cycle.unloaded(), DurationUnit.SECOND);
        row.standing = EnteredField.of(cycle.standing(), DurationUnit.SECOND);
        return row;
    }

    boolean isBlank() {
        return loaded.isBlank() && unloaded.isBlank() && standing.isBlank();
    }

    public EnteredField getLoaded() {
        return loaded;
    }

    public EnteredField getUnloaded() {
        return unloaded;
    }

    public EnteredField getStanding() {
        return standing;
    }
}
