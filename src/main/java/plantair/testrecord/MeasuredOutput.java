package plantair.testrecord;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.supply.CapacityPart;
import plantair.supply.SharedPart;
import plantair.trend.ReferencePressure;

/**
 * What a compressor was measured to deliver last, as free air at its intake and at the speed of the test.
 *
 * @param testId the newest test that joins the trend
 * @param compressorId the machine
 * @param on the day of the test where it was made
 * @param flow free air
 * @param at pressure that the flow belongs to
 * @param relativeRandom relative standard uncertainty that it shares with no other machine
 * @param shared what it shares with others: gauge, thermometer, volume
 */
public record MeasuredOutput(
        long testId,
        long compressorId,
        LocalDate on,
        FlowRate flow,
        GaugePressure at,
        double relativeRandom,
        List<SharedPart> shared) {

    static MeasuredOutput of(ResultLine test) {
        TestMarks marks = test.marks();
        List<SharedPart> shared = new ArrayList<>();
        // things without a name, and one gauge between different marks, are taken as the same: if anything too unsure
        shared.add(new SharedPart("gauge " + marks.gaugeId(), marks.gaugeU()));
        shared.add(new SharedPart("thermometer " + marks.thermometerId(), marks.thermometerU()));
        shared.add(new SharedPart("volume " + marks.volumeKey(), marks.volumeU()));
        shared.add(new SharedPart("method " + marks.airTemperature(), marks.methodU()));
        shared.removeIf(part -> part.relative() == 0);
        return new MeasuredOutput(
                test.testId(),
                test.compressorId(),
                test.date(),
                test.freeAir().orElseThrow(),
                marks.midPressure(),
                test.relativeRandom(),
                List.copyOf(shared));
    }

    /**
     * What it adds to a capacity at a pressure, carried there by the usual slope (T13) and its uncertainty; empty where the test
     * was made too far from that pressure.
     *
     * @param label how the plant calls the machine
     */
    public Optional<CapacityPart> part(String label, GaugePressure pressure) {
        if (!ReferencePressure.isNear(at, pressure)) {
            return Optional.empty();
        }
        List<SharedPart> all = new ArrayList<>(shared);
        double slope = ReferencePressure.error(at, pressure).relative();
        if (slope > 0) {
            all.add(new SharedPart("slope", slope));
        }
        return Optional.of(new CapacityPart(label, ReferencePressure.bring(flow, at, pressure), relativeRandom, all));
    }
}
