package plantair.audit;

import java.util.List;

/**
 * What a check found.
 *
 * @param lines lines of the chain that were read
 * @param records records that were compared
 * @param end digest at the end of the chain; to be kept elsewhere
 * @param faults what is not as it was recorded, the first hundred
 * @param faultCount how many there are in all
 */
public record AuditReport(long lines, long records, String end, List<Fault> faults, long faultCount) {

    public AuditReport {
        faults = List.copyOf(faults);
    }

    public boolean isSound() {
        return faultCount == 0;
    }
}
