package plantair.instrument;

import java.util.List;
import java.util.UUID;

/**
 * A calibration before it is recorded.
 *
 * @param submission made by the form, so that a form sent twice is one calibration
 * @param instrument what was calibrated
 * @param certificate what the certificate says
 * @param points what was found, may be empty
 */
public record CalibrationDraft(UUID submission, Instrument instrument, Certificate certificate, List<AsFound> points) {

    public CalibrationDraft {
        points = List.copyOf(points);
    }
}
