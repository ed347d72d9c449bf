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
    HERTZ("Hz", "Hz"),

    /** Hours loaded in a year. */
    HOUR("h", "h"),

    /** Money for a kilowatt hour; the currency stands beside it. */
    PER_KILOWATT_HOUR("/(kW.h)", "per kWh"),

    /** Money; the currency stands beside it. */
    MONEY("{money}", "money");

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
