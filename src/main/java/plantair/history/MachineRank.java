package plantair.history;

import org.jspecify.annotations.Nullable;
import plantair.trend.Standing;

/**
 * What decides whether and where the overview shows a machine.
 *
 * @param compressorId the machine
 * @param siteId its site
 * @param tag how the plant calls it
 * @param inService false once it is retired
 * @param judged how it stands; null when it was never tested
 */
record MachineRank(
        long compressorId,
        long siteId,
        String tag,
        boolean inService,
        @Nullable Standing judged) {

    /** A machine that was never tested stands as not known. */
    Standing standing() {
        return judged == null ? Standing.NOT_KNOWN : judged;
    }
}
