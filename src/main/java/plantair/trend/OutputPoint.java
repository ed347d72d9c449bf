package plantair.trend;

import java.time.LocalDate;
import plantair.quantity.FlowRate;

/**
 * One test of a compressor in its history.
 *
 * @param date day of the test
 * @param flow delivered flow, above zero; all points of one line on one basis
 * @param relativeU relative standard uncertainty from causes that differ between tests, above zero; 0.03 is 3 %
 */
public record OutputPoint(LocalDate date, FlowRate flow, double relativeU) {

    /** @throws IllegalArgumentException when the flow or its uncertainty is not above zero */
    public OutputPoint {
        if (!(flow.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("flow must be positive: " + flow.cubicMetresPerSecond() + " m³/s");
        }
        if (!(relativeU > 0 && relativeU <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("relativeU must be positive and finite: " + relativeU);
        }
    }
}
