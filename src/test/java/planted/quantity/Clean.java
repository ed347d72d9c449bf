package planted.quantity;

import java.util.List;
import java.util.Map;

/** No fault: the rules must let this pass. */
public record Clean(double value, List<Double> more) {

    double root() {
        return Math.sqrt(Math.abs(value)) + StrictMath.exp(value);
    }

    double sum() {
        double[] copy = more.stream().mapToDouble(Double::doubleValue).toArray();
        return Map.of("first", copy[0]).size();
    }
}
