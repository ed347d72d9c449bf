package plantair.demo;

/** Properties of air for the simulation, from other sources than those of the method, so that the two can disagree. */
final class TrueAir {

    /** J/(kg K), dry air. */
    static final double GAS_CONSTANT = 287.05;

    /** J/(kg K), dry air at constant pressure. */
    static final double CP = 1006;

    /** J/(kg K), dry air at constant volume. */
    static final double CV = CP - GAS_CONSTANT;

    private static final double MOLAR_GAS_CONSTANT = 8.314462618;
    private static final double FREEZING_K = 273.15;

    private TrueAir() {}

    /** Saturation pressure over water, Pa. Source: Magnus form of Alduchov and Eskridge 1996 (from memory). */
    static double saturation(double kelvin) {
        double celsius = kelvin - FREEZING_K;
        return 610.94 * StrictMath.exp(17.625 * celsius / (celsius + 243.04));
    }

    /** Compressibility factor. Source: second virial coefficient of the Beattie-Bridgeman equation (from memory). */
    static double z(double pascals, double kelvin) {
        double litresPerMol =
                0.04611 - 0.1318441 / (MOLAR_GAS_CONSTANT * 1e-3 * kelvin) - 4.34e4 / (kelvin * kelvin * kelvin);
        return 1 + litresPerMol * 1e-3 * pascals / (MOLAR_GAS_CONSTANT * kelvin);
    }
}
