package plantair.quantity;

/** Units of pressure, gauge or absolute. Definitions: NIST SP 811 (from memory). */
public enum PressureUnit implements Unit {
    /** Pound-force (4.4482216152605 N, exact) per square inch (0.0254 m, exact). */
    PSI("[psi]", "psi", 4.4482216152605 / (0.0254 * 0.0254)),

    /** 100,000 Pa, exact. */
    BAR("bar", "bar", 100_000),

    /** 1,000 Pa, exact. */
    KPA("kPa", "kPa", 1_000),

    /** Kilogram-force (9.80665 N, exact) per square centimetre. */
    KGF_CM2("kgf/cm2", "kgf/cm²", 9.80665 / 1e-4),

    /** Conventional inch of mercury at 0 °C: 25.4 mm of 133.322387415 Pa. */
    IN_HG("[in_i'Hg]", "inHg", 25.4 * 133.322387415),

    /** 100 Pa, exact; the millibar of weather reports. */
    HPA("hPa", "hPa", 100);

    private final String code;
    private final String symbol;
    private final double pascals;

    PressureUnit(String code, String symbol, double pascals) {
        this.code = code;
        this.symbol = symbol;
        this.pascals = pascals;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    double toSi(double value) {
        return value * pascals;
    }

    double fromSi(double si) {
        return si / pascals;
    }
}
