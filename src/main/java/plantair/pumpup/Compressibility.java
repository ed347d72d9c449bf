package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.Temperature;

/** How far air is from an ideal gas: Z in P v = Z R T (M6). */
public enum Compressibility {
    /** Z = 1; for hand checks and textbook examples. */
    IDEAL {
        @Override
        public double z(AbsolutePressure pressure, Temperature temperature) {
            return 1;
        }
    },

    /**
     * Z = 1 + B(T) P/(R T) with the second virial coefficient of dry air B = 34.9568 − 6687.72/T − 2.10141e6/T² +
     * 9.24746e7/T³ cm³/mol. Valid 173 to 473 K; the third coefficient, left out, adds 0.02 % at 1 MPa and 0.09 % at 2 MPa.
     * Source: Hyland and Wexler 1983 (coefficients from memory). Checked by: CompressibilityReferenceTests.
     */
    DRY_AIR {
        @Override
        public double z(AbsolutePressure pressure, Temperature temperature) {
            double t = temperature.kelvin();
            double b = 34.9568 - 6.68772e3 / t - 2.10141e6 / (t * t) + 9.24746e7 / (t * t * t);
            return 1 + b * 1e-6 * pressure.pascals() / (MOLAR_GAS_CONSTANT * t);
        }
    };

    /** J/(mol K); exact since 2019 to the digits given. Source: SI brochure (from memory). */
    private static final double MOLAR_GAS_CONSTANT = 8.31446261815324;

    /** The compressibility factor, near 1. */
    public abstract double z(AbsolutePressure pressure, Temperature temperature);
}
