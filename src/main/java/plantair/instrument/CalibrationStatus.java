package plantair.instrument;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Whether an instrument may be relied on, by its last calibration. */
public enum CalibrationStatus {
    /** Calibrated, and not due for a while. */
    IN_DATE,
    /** Due within 30 days. */
    DUE_SOON,
    /** The last day of the certificate is past. */
    OVERDUE,
    /** It left its last calibration out of order. */
    OUT_OF_ORDER,
    /** Never calibrated as far as is recorded. */
    NO_CERTIFICATE;

    private static final int SOON_DAYS = 30;

    /**
     * The status on a day.
     *
     * @param latest last calibration done on that day or before; null when there is none
     */
    public static CalibrationStatus of(@Nullable Calibration latest, LocalDate day) {
        if (latest == null) {
            return NO_CERTIFICATE;
        }
        if (!latest.certificate().leftInOrder()) {
            return OUT_OF_ORDER;
        }
        if (latest.dueOn().isBefore(day)) {
            return OVERDUE;
        }
        return latest.dueOn().isAfter(day.plusDays(SOON_DAYS)) ? IN_DATE : DUE_SOON;
    }
}
