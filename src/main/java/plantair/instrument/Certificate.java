package plantair.instrument;

import jakarta.persistence.Embeddable;
import java.time.LocalDate;

/**
 * What a calibration certificate says, points aside.
 *
 * @param doneOn day of the calibration
 * @param dueOn last day it counts; after doneOn
 * @param certificateNumber may be empty
 * @param laboratory who did it
 * @param traceability to which standard it leads, may be empty
 * @param leftInOrder whether the instrument was in order when it left the laboratory
 * @param note free text, may be empty
 */
@Embeddable
public record Certificate(
        LocalDate doneOn,
        LocalDate dueOn,
        String certificateNumber,
        String laboratory,
        String traceability,
        boolean leftInOrder,
        String note) {}
