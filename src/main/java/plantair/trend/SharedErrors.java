package plantair.trend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plantair.statistics.Column;
import plantair.trend.SharedError.Cause;

/**
 * The errors that tests of a record share (T7). One that all have alike is a constant in ln q and is left out; one that some
 * have and others have not, or in another measure, changes inside the record.
 */
final class SharedErrors {

    private record Key(Cause cause, String key) {

        static Key of(SharedError error) {
            return new Key(error.cause(), error.key());
        }
    }

    /** Per test the coefficient, and the coefficient times the uncertainty. */
    private record Source(double[] coefficients, double[] parts) {

        Source(int tests) {
            this(new double[tests], new double[tests]);
        }

        boolean changes() {
            for (double coefficient : coefficients) {
                if (Double.compare(coefficient, coefficients[0]) != 0) {
                    return true;
                }
            }
            return false;
        }
    }

    private final List<OutputPoint> points;
    private final Map<Key, Source> changing = new LinkedHashMap<>();
    private final Map<Key, Source> constant = new LinkedHashMap<>();

    /** @param points in order of their dates */
    SharedErrors(List<OutputPoint> points) {
        this.points = points;
        Map<Key, Source> all = new LinkedHashMap<>();
        for (int i = 0; i < points.size(); i++) {
            for (SharedError error : points.get(i).shared()) {
                if (error.relativeU() > 0 && error.coefficient() != 0) {
                    Source source = all.computeIfAbsent(Key.of(error), key -> new Source(points.size()));
                    source.coefficients[i] = error.coefficient();
                    source.parts[i] = error.coefficient() * error.relativeU();
                }
            }
        }
        all.forEach((key, source) -> (source.changes() ? changing : constant).put(key, source));
    }

    /** How many change inside the record. */
    int count() {
        return changing.size();
    }

    /** Of each that changes a column about which nothing is known. */
    Collection<Column> asFree() {
        return changing.values().stream()
                .map(source -> Column.free(source.coefficients))
                .toList();
    }

    /** Of each that changes a column in units of its standard uncertainty. */
    Collection<Column> asKnown() {
        return changing.values().stream()
                .map(source -> Column.sharedError(1, source.parts))
                .toList();
    }

    /** What another test has of the errors that change here. */
    double[] partsOf(OutputPoint next) {
        double[] parts = new double[changing.size()];
        int j = 0;
        for (Key key : changing.keySet()) {
            for (SharedError error : next.shared()) {
                parts[j] += Key.of(error).equals(key) ? error.coefficient() * error.relativeU() : 0;
            }
            j++;
        }
        return parts;
    }

    /** Relative variance that another test has against this record from errors that do not change here. */
    double varianceBeyond(OutputPoint next) {
        double variance = 0;
        for (SharedError error : next.shared()) {
            Key key = Key.of(error);
            if (!changing.containsKey(key) && !constant.containsKey(key)) {
                variance += square(error.coefficient() * error.relativeU());
            }
        }
        for (Map.Entry<Key, Source> entry : constant.entrySet()) {
            double coefficient = next.shared().stream()
                    .filter(error -> Key.of(error).equals(entry.getKey()))
                    .mapToDouble(SharedError::coefficient)
                    .sum();
            double here = entry.getValue().coefficients[0];
            variance += square((1 - coefficient / here) * entry.getValue().parts[0]);
        }
        return variance;
    }

    /** Where a cause was in a state for the first time, oldest first; the return to an earlier state is no change. */
    List<SourceChange> changes() {
        List<SourceChange> changes = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            List<Source> sources = changing.entrySet().stream()
                    .filter(entry -> entry.getKey().cause == cause)
                    .map(Map.Entry::getValue)
                    .toList();
            Set<List<Double>> seen = new HashSet<>();
            for (int i = 0; i < points.size() && !sources.isEmpty(); i++) {
                if (seen.add(state(sources, i)) && i > 0) {
                    changes.add(new SourceChange(points.get(i).date(), cause, shift(sources, i)));
                }
            }
        }
        changes.sort(Comparator.comparing(SourceChange::since));
        return changes;
    }

    private static List<Double> state(List<Source> sources, int test) {
        return sources.stream().map(source -> source.coefficients[test]).toList();
    }

    private static double shift(List<Source> sources, int test) {
        double variance = 0;
        for (Source source : sources) {
            variance += square(source.parts[test] - source.parts[test - 1]);
        }
        return Math.sqrt(variance);
    }

    private static double square(double x) {
        return x * x;
    }
}
