package plantair.pumpup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How sure the level of a flow from a rise is (S22): parts, each relative and standard (k = 1), independent of each other.
 * That air in a receiver warms while it is filled is none of them: it makes the level 4 to 16 % too high and nearly the same
 * all along (S3), which is why the level is not compared with a rating.
 *
 * @param parts largest first
 */
public record CurveBudget(List<Part> parts) {

    private static final double WIDTH_TO_U = 1 / StrictMath.sqrt(12);

    /** Where a part comes from. */
    public enum Source {
        /** Scatter of the readings about the curve. */
        SCATTER,
        /** The curve not being a polynomial. */
        CURVE,
        /** The gauge or logger. */
        GAUGE,
        /** Size of receivers and pipes. */
        VOLUME,
        /** Station pressure. */
        STATION,
        /** Air in the receiver, which was read at both ends of a run. */
        RECEIVER_AIR,
        /** Temperature and humidity of the air at the intake. */
        INTAKE_AIR
    }

    /**
     * One part.
     *
     * @param source where it comes from
     * @param relative relative standard uncertainty of the flow
     */
    public record Part(Source source, double relative) {}

    /** Sorts the parts. */
    public CurveBudget {
        parts = parts.stream()
                .sorted(Comparator.comparingDouble(Part::relative).reversed())
                .toList();
    }

    static CurveBudget of(FlowAtPressure flow, TimedFill fill) {
        PumpUpReadings readings = fill.readings();
        Intake intake = readings.intake();
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(Source.SCATTER, flow.relativeFit()));
        parts.add(new Part(Source.CURVE, FlowAtPressure.MODEL_U));
        parts.add(new Part(Source.GAUGE, gauge(flow, fill.gauge())));
        parts.add(new Part(Source.VOLUME, Budget.volumeU(readings)));
        parts.add(new Part(Source.STATION, Budget.stationU(readings) / intake.dryPa()));
        TimedFill.Air air = fill.air();
        if (air != null) {
            double thermometerU = readings.circumstances().instruments().thermometerU();
            parts.add(new Part(
                    Source.RECEIVER_AIR,
                    StrictMath.hypot(thermometerU, WIDTH_TO_U * air.warmed().kelvin())
                            / air.mean().kelvin()));
            double saturation = SaturationPressure.at(intake.temperature()).pascals();
            parts.add(new Part(
                    Source.INTAKE_AIR,
                    StrictMath.hypot(
                            thermometerU / intake.temperature().kelvin(),
                            Budget.humidityU(readings) * saturation / intake.dryPa())));
        }
        return new CurveBudget(parts);
    }

    /** As S3, or what M20 takes for a gauge of which nothing is known. */
    private static double gauge(FlowAtPressure flow, @Nullable GaugeAccuracy gauge) {
        return gauge == null
                ? Math.max(
                        Budget.UNKNOWN_GAUGE,
                        Budget.UNKNOWN_GAUGE_PA / flow.window().pascals())
                : flow.relativeGauge(gauge);
    }

    /** Root sum of squares. */
    public double combined() {
        double sum = 0;
        for (Part part : parts) {
            sum += part.relative() * part.relative();
        }
        return StrictMath.sqrt(sum);
    }
}
