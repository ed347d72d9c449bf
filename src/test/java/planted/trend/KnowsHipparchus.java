package planted.trend;

import org.hipparchus.util.FastMath;

/** A library outside the one package that may use it. */
public class KnowsHipparchus {

    double one() {
        return FastMath.exp(0);
    }
}
