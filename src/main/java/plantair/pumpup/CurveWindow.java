package plantair.pumpup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plantair.quantity.GaugePressure;

/**
 * The readings round a pressure that say something about the flow there (S2): those within ± 2 bar; where they are fewer than
 * six, the six nearest. A curve of the third degree for more than 5 bar with twelve or more, else of the second. Source: own
 * simulation, docs/supply.md.
 */
record CurveWindow(List<TimedPressure> points, double lowPa, double highPa) {

    static final double HALF_PA = 2e5;
    static final int FEWEST = 6;
    private static final double WIDE_PA = 5e5;
    private static final int MANY = 12;

    static CurveWindow of(List<TimedPressure> rise, GaugePressure at, double halfPa) {
        List<TimedPressure> near = new ArrayList<>(
                rise.stream().filter(point -> distance(point, at) <= halfPa).toList());
        if (near.size() < FEWEST) {
            near = rise.stream()
                    .sorted(Comparator.comparingDouble(point -> distance(point, at)))
                    .limit(FEWEST)
                    .toList();
        }
        double low = near.stream().mapToDouble(TimedPressure::pascals).min().orElse(at.pascals());
        double high = near.stream().mapToDouble(TimedPressure::pascals).max().orElse(at.pascals());
        return new CurveWindow(near, low, high);
    }

    private static double distance(TimedPressure point, GaugePressure at) {
        return Math.abs(point.pascals() - at.pascals());
    }

    int degree() {
        return highPa - lowPa > WIDE_PA && points.size() >= MANY ? 3 : 2;
    }

    /** How many different pressures there are. */
    long pressures() {
        return points.stream().mapToDouble(TimedPressure::pascals).distinct().count();
    }

    /** How far a pressure lies outside, Pa; zero inside. */
    double outside(GaugePressure at) {
        return Math.max(0, Math.max(lowPa - at.pascals(), at.pascals() - highPa));
    }

    /** The smaller part of the range on one side of a pressure. */
    double shareBeyond(GaugePressure at) {
        double below = (at.pascals() - lowPa) / (highPa - lowPa);
        return Math.min(below, 1 - below);
    }
}
