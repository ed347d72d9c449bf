package plantair.trend;

import java.time.LocalDate;
import java.util.List;
import plantair.quantity.FlowRate;

/**
 * One test of a compressor in its history.
 *
 * @param test number of the test
 * @param date day of the test
 * @param flow delivered flow, above zero; all points of one line on one basis, at one pressure and speed
 * @param relativeU relative standard uncertainty from causes that differ between tests, above zero; 0.03 is 3 %
 * @param shared errors that other tests may have too
 */
public record OutputPoint(long test, LocalDate date, FlowRate flow, double relativeU, List<SharedError> shared) {

    /** @throws IllegalArgumentException when the flow or its uncertainty is not above zero */
    public OutputPoint {
        shared = List.copyOf(shared);
        if (!(flow.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("flow must be positive: " + flow.cubicMetresPerSecond() + " m³/s");
        }
        if (!(relativeU > 0 && relativeU <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("relativeU must be positive and finite: " + relativeU);
        }
    }

    /** A test that shares no error that could change. */
    public OutputPoint(LocalDate date, FlowRate flow, double relativeU) {
        this(0, date, flow, relativeU, List.of());
    }
}
