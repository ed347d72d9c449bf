package plantair.quantity;

/** Units of elapsed time. */
public enum DurationUnit implements Unit {
    /** The SI unit. */
    SECOND("s", "s", 1),

    /** 60 s. */
    MINUTE("min", "min", 60),

    /** Minutes and seconds written with a colon, 1:02.4; read by {@link Entered}. Not a UCUM code. */
    MINUTES_SECONDS("m:ss", "m:ss", 1);

    private final String code;
    private final String symbol;
    private final double seconds;

    DurationUnit(String code, String symbol, double seconds) {
        this.code = code;
        this.symbol = symbol;
        this.seconds = seconds;
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
        return value * seconds;
    }

    double fromSi(double si) {
        return si / seconds;
    }
}
