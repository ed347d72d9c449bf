package plantair.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plantair.statistics.Column;

/**
 * The recorded events inside a record of tests (T6). Events between the same two tests share one step, since no test tells
 * them apart; events before the first test or after the last make none.
 */
final class Steps {

    /** From the first of its events on; the first test after it is number {@code firstTest} of the record. */
    private record Step(LocalDate from, int firstTest) {}

    private static final int MANY = 5;

    private final List<OutputPoint> points;
    private final List<LocalDate> events;
    private final List<Step> steps = new ArrayList<>();

    /**
     * The steps of a record.
     *
     * @param points in order of their dates
     * @param events in any order, a day more than once where several things were done
     */
    Steps(List<OutputPoint> points, List<LocalDate> events) {
        this.points = points;
        this.events = events.stream().distinct().sorted().toList();
        int last = 0;
        for (LocalDate event : this.events) {
            int first = firstTestAfter(event);
            if (first > last && first < points.size()) {
                steps.add(new Step(event, first));
                last = first;
            }
        }
    }

    private int firstTestAfter(LocalDate event) {
        int after = 0;
        while (after < points.size() && points.get(after).date().isBefore(event)) {
            after++;
        }
        return after;
    }

    List<LocalDate> events() {
        return events;
    }

    int count() {
        return steps.size();
    }

    /** Number of the step that an event has its share in; −1 when no test is before or none after it. */
    int stepOf(LocalDate event) {
        int first = firstTestAfter(event);
        for (int j = 0; j < steps.size(); j++) {
            if (steps.get(j).firstTest == first) {
                return j;
            }
        }
        return -1;
    }

    /** For each step the tests after it. */
    List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        for (Step step : steps) {
            double[] parts = new double[points.size()];
            for (int i = step.firstTest; i < points.size(); i++) {
                parts[i] = 1;
            }
            columns.add(Column.free(parts));
        }
        return columns;
    }

    /** The last step with five tests or more on either side of it; −1 when there is none. */
    int lastBetweenMany() {
        int last = -1;
        for (int j = 0; j < steps.size(); j++) {
            int before = steps.get(j).firstTest;
            if (before >= MANY && points.size() - before >= MANY) {
                last = j;
            }
        }
        return last;
    }

    /** The first day after step j. */
    LocalDate from(int j) {
        return steps.get(j).from;
    }

    /** Whether step j was made by a day: 1 or 0. */
    double part(int j, LocalDate date) {
        return date.isBefore(steps.get(j).from) ? 0 : 1;
    }
}
