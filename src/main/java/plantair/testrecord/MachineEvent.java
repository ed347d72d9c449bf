package plantair.testrecord;

import java.time.LocalDate;
import plantair.maintenance.EventKind;
import plantair.maintenance.MaintenanceEvent;

/**
 * What the trend has to know of a maintenance event.
 *
 * @param date its day; a test of that day counts as after it
 * @param mayStep whether it may have changed the output
 * @param gaugeChanged whether another gauge was fitted
 */
public record MachineEvent(LocalDate date, boolean mayStep, boolean gaugeChanged) {

    static MachineEvent of(MaintenanceEvent event) {
        return new MachineEvent(event.happenedOn(), event.mayStep(), event.kind() == EventKind.GAUGE_CHANGE);
    }
}
