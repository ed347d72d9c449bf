package plantair.quantity;

/** Units of volume. Definitions: NIST SP 811 (from memory). */
public enum VolumeUnit implements Unit {
    /** US gallon: 231 cubic inches, exact. */
    US_GAL("[gal_us]", "US gal", 231 * 0.0254 * 0.0254 * 0.0254),

    /** 0.001 m³, exact. */
    LITRE("L", "L", 0.001),

    /** Cubic foot of 0.3048 m, exact. */
    CUBIC_FOOT("[cft_i]", "ft³", 0.3048 * 0.3048 * 0.3048),

    /** The SI unit. */
    CUBIC_METRE("m3", "m³", 1);

    private final String code;
    private final String symbol;
    private final double cubicMetres;

    VolumeUnit(String code, String symbol, double cubicMetres) {
        this.code = code;
        this.symbol = symbol;
        this.cubicMetres = cubicMetres;
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
        return value * cubicMetres;
    }

    double fromSi(double si) {
        return si / cubicMetres;
    }
}
