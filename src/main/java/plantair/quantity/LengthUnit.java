package plantair.quantity;

/** Units of length: elevation, pipe length and bore. */
public enum LengthUnit implements Unit {
    /** 0.3048 m, exact. */
    FOOT("[ft_i]", "ft", 0.3048),

    /** The SI unit. */
    METRE("m", "m", 1),

    /** 0.0254 m, exact. */
    INCH("[in_i]", "in", 0.0254),

    /** 0.001 m, exact. */
    MILLIMETRE("mm", "mm", 0.001);

    private final String code;
    private final String symbol;
    private final double metres;

    LengthUnit(String code, String symbol, double metres) {
        this.code = code;
        this.symbol = symbol;
        this.metres = metres;
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
        return value * metres;
    }

    double fromSi(double si) {
        return si / metres;
    }
}
