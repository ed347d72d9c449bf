package plantair.demo;

import java.util.Random;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;

/**
 * A pressure gauge and how it is read.
 *
 * @param unit on its dial
 * @param resolution what a person can read from it, in its unit
 * @param error it shows so much more than is there; 0.01 is 1 %
 */
record Gauge(PressureUnit unit, double resolution, double error) {

    /** What the needle shows at a true gauge pressure. */
    double shown(double pascals) {
        return new GaugePressure(pascals).in(unit) * (1 + error);
    }

    /** The true gauge pressure when the eye takes the needle to be on this mark. */
    double pascalsAt(double mark, Random random) {
        double needle = mark + 0.3 * resolution * random.nextGaussian();
        return pascals(needle);
    }

    /** The true gauge pressure when the needle shows this. */
    double pascals(double needle) {
        return GaugePressure.of(needle / (1 + error), unit).pascals();
    }

    /** What is written down at a true gauge pressure. */
    Entered read(double pascals) {
        return mark(Math.rint(shown(pascals) / resolution) * resolution);
    }

    Entered mark(double value) {
        return new Entered(Rounded.places(value, resolution < 0.1 ? 2 : resolution < 1 ? 1 : 0), unit);
    }
}
