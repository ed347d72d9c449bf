package plantair.quantity;

/** Units of volume flow. A flow is never shown without its {@link FlowBasis}. */
public enum FlowUnit implements Unit {
    /** Cubic foot (0.3048 m, exact) a minute. */
    CFM("[cft_i]/min", "cfm", 0.3048 * 0.3048 * 0.3048 / 60),

    /** 0.001 m³/s, exact. */
    LITRE_PER_SECOND("L/s", "L/s", 0.001),

    /** 0.001 m³ in 60 s. */
    LITRE_PER_MINUTE("L/min", "L/min", 0.001 / 60),

    /** 1 m³ in 60 s. */
    CUBIC_METRE_PER_MINUTE("m3/min", "m³/min", 1.0 / 60),

    /** 1 m³ in 3,600 s. */
    CUBIC_METRE_PER_HOUR("m3/h", "m³/h", 1.0 / 3600);

    private final String code;
    private final String symbol;
    private final double cubicMetresPerSecond;

    FlowUnit(String code, String symbol, double cubicMetresPerSecond) {
        this.code = code;
        this.symbol = symbol;
        this.cubicMetresPerSecond = cubicMetresPerSecond;
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
        return value * cubicMetresPerSecond;
    }

    double fromSi(double si) {
        return si / cubicMetresPerSecond;
    }
}
