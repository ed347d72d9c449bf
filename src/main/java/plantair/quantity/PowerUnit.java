package plantair.quantity;

/** Units of power. */
public enum PowerUnit implements Unit {
    /** Mechanical horsepower: 550 ft·lbf/s. */
    HP("[HP]", "hp", 550 * 0.3048 * 4.4482216152605),

    /** 1,000 W, exact. */
    KW("kW", "kW", 1_000);

    private final String code;
    private final String symbol;
    private final double watts;

    PowerUnit(String code, String symbol, double watts) {
        this.code = code;
        this.symbol = symbol;
        this.watts = watts;
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
        return value * watts;
    }

    double fromSi(double si) {
        return si / watts;
    }
}
