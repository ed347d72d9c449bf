package plantair.quantity;

/** Scales of temperature. Unlike the other units they have an offset. Source: the kelvin's definition, exact. */
public enum TemperatureUnit implements Unit {
    /** K = (°F + 459.67) × 5/9. */
    FAHRENHEIT("[degF]", "°F", 459.67, 1.8),

    /** K = °C + 273.15. */
    CELSIUS("Cel", "°C", 273.15, 1),

    /** The SI unit. */
    KELVIN("K", "K", 0, 1);

    private final String code;
    private final String symbol;
    private final double offset;
    private final double perKelvin;

    TemperatureUnit(String code, String symbol, double offset, double perKelvin) {
        this.code = code;
        this.symbol = symbol;
        this.offset = offset;
        this.perKelvin = perKelvin;
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
        return (value + offset) / perKelvin;
    }

    double differenceToSi(double degrees) {
        return degrees / perKelvin;
    }

    double fromSi(double kelvin) {
        return kelvin * perKelvin - offset;
    }
}
