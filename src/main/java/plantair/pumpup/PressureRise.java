package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import plantair.quantity.GaugePressure;

/**
 * The part of some readings in which the pressure rises (S1): of the largest rise from a reading to a later one, from the last
 * reading within 1 % of its bottom to the first within 1 % of its top, and on both sides as far as each reading is still above
 * the one before. A stand before the start, a blow-off afterwards and other rises are left out and counted. Linear in time.
 *
 * <p>The rule is ours. Checked by: FlowAtPressureTests.
 *
 * @param points the readings of the rise, in their order; empty when there is none
 * @param findings what is odd about the readings
 */
public record PressureRise(List<TimedPressure> points, List<CurveFinding> findings) {

    private static final double EDGE = 0.01;

    /** Keeps copies. */
    public PressureRise {
        points = List.copyOf(points);
        findings = List.copyOf(findings);
    }

    /**
     * The rise in some readings.
     *
     * @param readings in the order in which they were taken
     */
    public static PressureRise of(List<TimedPressure> readings) {
        List<TimedPressure> all = List.copyOf(readings);
        List<CurveFinding> findings = new ArrayList<>();
        note(findings, CurveCode.TIME_FALLS, count(all, (one, next) -> next.seconds() < one.seconds()));
        List<TimedPressure> rise = findings.isEmpty() ? rise(all) : List.of();
        if (!rise.isEmpty()) {
            note(findings, CurveCode.LEFT_OUT, all.size() - rise.size());
            note(findings, CurveCode.PRESSURE_FELL, count(rise, (one, next) -> next.pascals() < one.pascals()));
            note(findings, CurveCode.PRESSURE_STOOD, count(rise, (one, next) -> next.pascals() == one.pascals()));
        }
        return new PressureRise(rise, findings);
    }

    /**
     * The same with neighbours averaged in groups of one size, so that no more than some are left (S2).
     *
     * @param most one or more
     */
    PressureRise averaged(int most) {
        int size = (points.size() + most - 1) / most;
        if (size <= 1) {
            return this;
        }
        List<TimedPressure> means = new ArrayList<>();
        for (int from = 0; from < points.size(); from += size) {
            List<TimedPressure> group = points.subList(from, Math.min(from + size, points.size()));
            double seconds = 0;
            double pascals = 0;
            for (TimedPressure point : group) {
                seconds += point.seconds() / group.size();
                pascals += point.pascals() / group.size();
            }
            means.add(new TimedPressure(seconds, new GaugePressure(pascals)));
        }
        return new PressureRise(means, findings);
    }

    private static List<TimedPressure> rise(List<TimedPressure> all) {
        int lowest = 0;
        int bottom = 0;
        int top = 0;
        for (int i = 1; i < all.size(); i++) {
            if (all.get(i).pascals() < all.get(lowest).pascals()) {
                lowest = i;
            }
            if (height(all, lowest, i) > height(all, bottom, top)) {
                bottom = lowest;
                top = i;
            }
        }
        return top == bottom ? List.of() : trimmed(all, bottom, top);
    }

    private static List<TimedPressure> trimmed(List<TimedPressure> all, int bottom, int top) {
        double edge = EDGE * height(all, bottom, top);
        int first = top;
        while (height(all, bottom, first) > edge) {
            first--;
        }
        int last = first;
        while (height(all, last, top) > edge) {
            last++;
        }
        while (first > 0 && height(all, first - 1, first) > 0) {
            first--;
        }
        while (last + 1 < all.size() && height(all, last, last + 1) > 0) {
            last++;
        }
        return all.subList(first, last + 1);
    }

    private static double height(List<TimedPressure> all, int from, int to) {
        return all.get(to).pascals() - all.get(from).pascals();
    }

    private static int count(List<TimedPressure> points, BiPredicate<TimedPressure, TimedPressure> odd) {
        int count = 0;
        for (int i = 1; i < points.size(); i++) {
            count += odd.test(points.get(i - 1), points.get(i)) ? 1 : 0;
        }
        return count;
    }

    private static void note(List<CurveFinding> findings, CurveCode code, int count) {
        if (count > 0) {
            findings.add(new CurveFinding(code, count));
        }
    }
}
