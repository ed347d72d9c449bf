package plantair.quantity;

/** Units of readings for which the trade uses one unit only. */
public enum FixedUnit implements Unit {
    /** Relative humidity. */
    PERCENT("%", "%"),

    /** Shaft speed. */
    RPM("{rev}/min", "rpm"),

    /** Motor voltage. */
    VOLT("V", "V"),

    /** Motor current. */
    AMPERE("A", "A"),

    /** Supply frequency. */
    HERTZ("Hz", "Hz");

    private final String code;
    private final String symbol;

    FixedUnit(String code, String symbol) {
        this.code = code;
        this.symbol = symbol;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String symbol() {
        return symbol;
    }
}
