package plantair.testrecord;

import java.util.ArrayList;
import java.util.List;
import plantair.quantity.FlowRate;
import plantair.trend.OutputPoint;
import plantair.trend.ReferencePressure;
import plantair.trend.SharedError;
import plantair.trend.SharedError.Cause;

/**
 * From tests to points of a trend, all at the pressure of one reference test. A gauge read at other marks counts as another
 * gauge, since its errors differ from mark to mark.
 */
final class TestPoints {

    private final TestMarks reference;
    private final List<MachineEvent> events;
    private final List<TestMarks> bands = new ArrayList<>();

    TestPoints(ResultLine reference, List<MachineEvent> events) {
        this.reference = reference.marks();
        this.events = events;
        bands.add(this.reference);
    }

    OutputPoint of(ResultLine test) {
        TestMarks marks = test.marks();
        FlowRate flow = test.comparable().orElseThrow();
        int band = band(marks);
        List<SharedError> shared = new ArrayList<>(List.of(
                error(Cause.GAUGE, gauge(test) + " band " + band, marks.gaugeU()),
                error(Cause.VOLUME, marks.volumeKey(), marks.volumeU()),
                error(Cause.THERMOMETER, String.valueOf(marks.thermometerId()), marks.thermometerU()),
                error(Cause.METHOD, marks.airTemperature() + " band " + band, marks.methodU())));
        if (band > 0) {
            flow = ReferencePressure.bring(flow, marks.midPressure(), reference.midPressure());
            shared.add(ReferencePressure.error(marks.midPressure(), reference.midPressure()));
        }
        shared.removeIf(error -> error.relativeU() == 0);
        return new OutputPoint(test.testId(), test.date(), flow, test.relativeRandom(), shared);
    }

    private static SharedError error(Cause cause, String key, double relativeU) {
        return new SharedError(cause, key, 1, relativeU);
    }

    /** A gauge without a name is another one after a recorded change of gauge. */
    private String gauge(ResultLine test) {
        Long id = test.marks().gaugeId();
        return id != null
                ? "gauge " + id
                : "unnamed gauge "
                        + events.stream()
                                .filter(event ->
                                        event.gaugeChanged() && !event.date().isAfter(test.date()))
                                .count();
    }

    /** Number of the pair of marks, 0 for those of the reference. */
    private int band(TestMarks marks) {
        for (int i = 0; i < bands.size(); i++) {
            if (ReferencePressure.isSameMark(marks.start(), bands.get(i).start())
                    && ReferencePressure.isSameMark(marks.stop(), bands.get(i).stop())) {
                return i;
            }
        }
        bands.add(marks);
        return bands.size() - 1;
    }
}
