package plantair.demo;

/** A receiver while air flows in: dry mass, air temperature and shell temperature, step by step. */
final class Tank {

    private static final double SLENDERNESS = 2.6;
    private static final double SHELL_J_PER_M2K = 22 * 490;
    private static final double OUTSIDE_W_PER_M2K = 7;
    private static final double STIRRED_W_PER_M2K = 8;

    private final double volume;
    private final double area;
    private final Weather weather;
    private double mass;
    private double air;
    private double shell;

    Tank(double volume, Weather weather, double pressure, double air) {
        this.volume = volume;
        this.weather = weather;
        this.air = air;
        shell = air;
        double diameter = StrictMath.cbrt(4 * volume / (Math.PI * SLENDERNESS));
        area = Math.PI * diameter * diameter * (SLENDERNESS + 0.55);
        double dry = pressure - Math.min(weather.vapourFraction() * pressure, TrueAir.saturation(air));
        mass = dry * volume / (TrueAir.z(pressure, air) * TrueAir.GAS_CONSTANT * air);
    }

    double air() {
        return air;
    }

    /** Absolute pressure, Pa; vapour above saturation has condensed. */
    double pressure() {
        double x = weather.vapourFraction();
        double ideal = mass * TrueAir.GAS_CONSTANT * air / volume;
        double total = ideal;
        for (int i = 0; i < 3; i++) {
            double dry = ideal * TrueAir.z(total, air);
            total = dry + Math.min(dry * x / (1 - x), TrueAir.saturation(air));
        }
        return total;
    }

    /**
     * One step of the energy balance.
     *
     * @param seconds its length
     * @param in dry mass coming in, kg/s
     * @param inK its temperature
     * @param out dry mass lost, kg/s
     */
    void step(double seconds, double in, double inK, double out) {
        double difference = air - shell;
        double inside = (6 + 5 * StrictMath.cbrt(Math.abs(difference)) + (in > 0 ? STIRRED_W_PER_M2K : 0)) * area;
        double heat = inside * difference;
        double warming = in * (TrueAir.CP * inK - TrueAir.CV * air) - out * TrueAir.GAS_CONSTANT * air - heat;
        air += seconds * warming / (mass * TrueAir.CV);
        shell += seconds * (heat - OUTSIDE_W_PER_M2K * area * (shell - weather.kelvin())) / (SHELL_J_PER_M2K * area);
        mass += seconds * (in - out);
    }
}
