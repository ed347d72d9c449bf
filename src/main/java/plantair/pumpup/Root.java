package plantair.pumpup;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Finds where a function is zero, by the secant within a bracket (Illinois rule). Source: textbook numerics. */
final class Root {

    private static final int MOST_STEPS = 100;
    private static final double CLOSE = 1e-10;

    private Root() {}

    /** The root between two arguments; empty when the function has one sign at both or is not close after 100 steps. */
    static OptionalDouble between(double low, double high, DoubleUnaryOperator function) {
        double a = low;
        double b = high;
        double atA = function.applyAsDouble(a);
        double atB = function.applyAsDouble(b);
        if (!(atA * atB < 0)) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < MOST_STEPS; i++) {
            double x = (a * atB - b * atA) / (atB - atA);
            double atX = function.applyAsDouble(x);
            if (Math.abs(atX) < CLOSE) {
                return OptionalDouble.of(x);
            }
            if (atX * atB < 0) {
                a = b;
                atA = atB;
            } else {
                atA /= 2;
            }
            b = x;
            atB = atX;
        }
        return OptionalDouble.empty();
    }
}
