package plantair.instrument.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.instrument.AsFound;
import plantair.instrument.InstrumentFacts;
import plantair.instrument.InstrumentKind;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.register.Submission;

/**
 * Reads the points of a calibration. Blank rows are left out.
 *
 * @param sent the form
 * @param instrument what was calibrated
 */
record PointRows(Submission sent, InstrumentFacts instrument) {

    /** The most that a calibration may have. */
    static final int MOST = 20;

    /** An error beyond this part of its reading is likely the true value, typed in the wrong place. */
    private static final double LARGE_PART = 0.2;

    /** Every row that can be read, in order. */
    List<AsFound> read(List<PointRow> rows) {
        List<AsFound> points = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            String path = "points[" + i + "]";
            Optional<AsFound> point = rows.get(i).isBlank() ? Optional.empty() : read(path, rows.get(i));
            if (point.isPresent() && points.stream().anyMatch(other -> isSameReading(other, point.get()))) {
                sent.reject(path + ".reading.number", "calibration.points.twice");
            }
            point.ifPresent(points::add);
        }
        if (points.size() > MOST) {
            sent.reject("points[" + MOST + "].reading.number", "calibration.points.tooMany");
        }
        return points;
    }

    private Optional<AsFound> read(String path, PointRow row) {
        var unit = instrument.kind().unit();
        var reading = sent.checks().required(path + ".reading", row.getReading(), unit);
        var error = sent.checks().required(path + ".error", row.getError(), unit);
        if (reading.isEmpty() || error.isEmpty()) {
            return Optional.empty();
        }
        ask(path, reading.get(), error.get());
        return Optional.of(new AsFound(reading.get(), error.get()));
    }

    private void ask(String path, Entered reading, Entered error) {
        if (reading.unit() == error.unit()
                && reading.value() != 0
                && Math.abs(error.value()) > LARGE_PART * Math.abs(reading.value())) {
            sent.warnings().add(path + ".error", "calibration.error.large", error.toString(), reading.toString());
        }
        Entered span = instrument.span();
        if (instrument.kind() == InstrumentKind.GAUGE
                && span != null
                && GaugePressure.of(reading).pascals()
                        > PressureDifference.of(span).pascals()) {
            sent.warnings().add(path + ".reading", "calibration.reading.beyond", reading.toString(), span.toString());
        }
    }

    private static boolean isSameReading(AsFound a, AsFound b) {
        return a.reading().unit() == b.reading().unit()
                && a.reading().value() == b.reading().value();
    }
}
