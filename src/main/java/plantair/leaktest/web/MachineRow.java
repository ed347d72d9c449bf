package plantair.leaktest.web;

import org.jspecify.annotations.Nullable;
import plantair.leaktest.MachineCopy;
import plantair.quantity.FixedUnit;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** A compressor of the site as a person ticks it off. */
final class MachineRow {

    private String id = "";
    private String ran = "";
    private EnteredField capacity = new EnteredField();
    private EnteredField capacityAt = new EnteredField();
    private EnteredField percent = new EnteredField();

    /** A machine; with what an earlier record says of it, unless that is null. */
    static MachineRow of(long id, @Nullable MachineCopy copy, UnitSet units) {
        var row = new MachineRow();
        row.id = String.valueOf(id);
        row.ran = String.valueOf(copy != null);
        row.capacity = EnteredField.of(copy == null ? null : copy.capacity(), units.flow());
        row.capacityAt = EnteredField.of(copy == null ? null : copy.capacityAt(), units.pressure());
        row.percent = EnteredField.of(copy == null ? null : copy.capacityPercent(), FixedUnit.PERCENT);
        return row;
    }

    boolean hasRun() {
        return Boolean.parseBoolean(ran);
    }

    public String getId() {
        return id;
    }

    public void setId(String id) {
        this.id = id;
    }

    public String getRan() {
        return ran;
    }

    public void setRan(String ran) {
        this.ran = ran;
    }

    public EnteredField getCapacity() {
        return capacity;
    }

    public EnteredField getCapacityAt() {
        return capacityAt;
    }

    public EnteredField getPercent() {
        return percent;
    }
}
