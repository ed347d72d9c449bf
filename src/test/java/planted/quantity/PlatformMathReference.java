package planted.quantity;

import java.util.function.DoubleUnaryOperator;

/** The same through a method reference. */
public class PlatformMathReference {

    DoubleUnaryOperator logarithm = Math::log;
}
