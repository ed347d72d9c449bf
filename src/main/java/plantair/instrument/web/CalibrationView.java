package plantair.instrument.web;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.instrument.Calibration;

/**
 * A calibration as pages show it.
 *
 * @param id its id
 * @param doneOn day of the calibration
 * @param dueOn last day it counts
 * @param certificateNumber may be empty
 * @param laboratory who did it
 * @param traceability to which standard it leads, may be empty
 * @param found one line a point
 * @param foundErrors whether a point is wrong
 * @param leftInOrder whether it left in order
 * @param note free text, may be empty
 * @param by who recorded it
 * @param supersedes id of the one it corrects; null when it is the first
 * @param reason why it corrects that one; null when it is the first
 * @param isSuperseded whether another one takes its place
 */
record CalibrationView(
        long id,
        LocalDate doneOn,
        LocalDate dueOn,
        String certificateNumber,
        String laboratory,
        String traceability,
        List<String> found,
        boolean foundErrors,
        boolean leftInOrder,
        String note,
        String by,
        @Nullable Long supersedes,
        @Nullable String reason,
        boolean isSuperseded) {

    /** Those of an instrument, in the order given. */
    static List<CalibrationView> of(List<Calibration> history, CalibrationWords words) {
        return history.stream()
                .map(one -> of(one, words, history.stream().anyMatch(other -> corrects(other, one))))
                .toList();
    }

    private static boolean corrects(Calibration later, Calibration earlier) {
        Long superseded = later.supersedesId();
        return superseded != null && superseded == earlier.id();
    }

    private static CalibrationView of(Calibration calibration, CalibrationWords words, boolean isSuperseded) {
        var certificate = calibration.certificate();
        return new CalibrationView(
                calibration.id(),
                certificate.doneOn(),
                certificate.dueOn(),
                certificate.certificateNumber(),
                certificate.laboratory(),
                certificate.traceability(),
                calibration.points().stream().map(words::found).toList(),
                calibration.foundErrors(),
                certificate.leftInOrder(),
                certificate.note(),
                calibration.recordedBy(),
                calibration.supersedesId(),
                calibration.reason(),
                isSuperseded);
    }
}
