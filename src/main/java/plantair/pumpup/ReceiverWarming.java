package plantair.pumpup;

import plantair.quantity.VesselVolume;

/**
 * Lumped model of a receiver that warms while it is filled (M9): air of one temperature T and a shell of one temperature
 * Tw,
 *
 * <pre>
 * m c_v dT/dt    = ṁ (c_p T_in − c_v T) − h A (T − Tw)
 * M_w c_w dTw/dt = h A (T − Tw) − h_o A (Tw − Ta)
 * </pre>
 *
 * with constant ṁ chosen so that the pressure reaches P2 in the time read. F is the mass that would be stored at intake
 * temperature over the mass that the model stores.
 *
 * <p>Assumed: ideal dry air, mixed; A = 6.21 V^(2/3) (a cylinder three times as long as wide); shell 25 kg/m² of steel; h
 * = 20 W/m²K, times or divided by 2; h_o = 8 W/m²K; air comes in 20 ± 20 K above ambient; air at the start at ambient ±
 * 3 K. These are assumptions, not from a source; only 1 ≤ F ≤ 1.4 T_in/T_1 is thermodynamics. docs/method.md has the
 * derivation.
 *
 * <p>Checked by: ReceiverWarmingTests.
 */
final class ReceiverWarming {

    private static final double GAS_CONSTANT = 287.055;
    private static final double CP = 1005;
    private static final double CV = CP - GAS_CONSTANT;
    private static final double SHELL_J_PER_M2K = 25 * 480;
    private static final double OUTSIDE_W_PER_M2K = 8;
    private static final double INSIDE_W_PER_M2K = 20;
    private static final double INSIDE_SPREAD = 2;
    private static final double INLET_EXCESS_K = 20;
    private static final double INLET_HALF_WIDTH_K = 20;
    private static final double START_U_K = 3;
    private static final int LEAST_STEPS = 200;
    private static final double STEPS_PER_TIME_CONSTANT = 5;
    private static final int MOST_ITERATIONS = 25;
    private static final double CLOSE = 1e-12;

    private final double volumeM3;
    private final double areaM2;
    private final double startPa;
    private final double stopPa;
    private final double seconds;
    private final double ambientK;

    private ReceiverWarming(VesselVolume volume, RunReadings run, Intake intake) {
        volumeM3 = volume.cubicMetres();
        areaM2 = 6.21 * StrictMath.pow(volumeM3, 2.0 / 3);
        startPa = run.start().above(intake.station()).pascals();
        stopPa = run.stop().above(intake.station()).pascals();
        seconds = run.elapsed().seconds();
        ambientK = intake.temperature().kelvin();
    }

    /** The factor of one run. */
    static WarmingFactor factor(VesselVolume volume, RunReadings run, Intake intake) {
        var model = new ReceiverWarming(volume, run, intake);
        Fill usual = model.fill(INSIDE_W_PER_M2K, INLET_EXCESS_K, 0);
        double transfer = halfWidth(
                model.fill(INSIDE_W_PER_M2K / INSIDE_SPREAD, INLET_EXCESS_K, 0),
                model.fill(INSIDE_W_PER_M2K * INSIDE_SPREAD, INLET_EXCESS_K, 0));
        double inlet = halfWidth(
                model.fill(INSIDE_W_PER_M2K, INLET_EXCESS_K + INLET_HALF_WIDTH_K, 0),
                model.fill(INSIDE_W_PER_M2K, INLET_EXCESS_K - INLET_HALF_WIDTH_K, 0));
        double start = halfWidth(
                model.fill(INSIDE_W_PER_M2K, INLET_EXCESS_K, START_U_K),
                model.fill(INSIDE_W_PER_M2K, INLET_EXCESS_K, -START_U_K));
        // h is taken as one standard deviation at half and at twice; the inlet as a rectangle, half-width over root
        // three
        double shared = StrictMath.sqrt(transfer * transfer + inlet * inlet / 3);
        double f = 1 / usual.flowPart;
        return new WarmingFactor(f, shared * f, start * f, usual.warming);
    }

    private static double halfWidth(Fill a, Fill b) {
        return Math.abs(a.flowPart - b.flowPart) / 2;
    }

    /** 1/F, which is what the flow follows in proportion, and the rise of the air temperature. */
    private record Fill(double flowPart, double warming) {}

    private Fill fill(double insideWPerM2K, double inletExcessK, double startExcessK) {
        double conductance = insideWPerM2K * areaM2;
        double startK = ambientK + startExcessK;
        double cool = volumeM3 * (stopPa - startPa) / (GAS_CONSTANT * ambientK * seconds);
        // what the pressure does without any flow, as the air at the start takes on the temperature of the shell
        double idlePa = pressure(integrate(0, conductance, ambientK, startK));
        double massFlow = cool;
        double[] end = {};
        double correction = 0;
        for (int i = 0; i < MOST_ITERATIONS && Math.abs(correction - 1) > CLOSE; i++) {
            end = integrate(massFlow, conductance, ambientK + inletExcessK, startK);
            correction = (stopPa - idlePa) / (pressure(end) - idlePa);
            massFlow *= correction;
        }
        return new Fill(massFlow / cool, end[1] - startK);
    }

    private double pressure(double[] end) {
        return end[0] * GAS_CONSTANT * end[1] / volumeM3;
    }

    /** Mass and temperature of the air at the stop, by the midpoint rule. */
    private double[] integrate(double massFlow, double conductance, double inletK, double startK) {
        double mass = startPa * volumeM3 / (GAS_CONSTANT * startK);
        double timeConstants = seconds * conductance / (mass * CV);
        int steps = (int) Math.max(LEAST_STEPS, Math.ceil(STEPS_PER_TIME_CONSTANT * timeConstants));
        double dt = seconds / steps;
        double air = startK;
        double shell = ambientK;
        for (int i = 0; i < steps; i++) {
            double midMass = mass + massFlow * dt / 2;
            double midAir = air + dt / 2 * airSlope(massFlow, conductance, inletK, mass, air, shell);
            double midShell = shell + dt / 2 * shellSlope(conductance, air, shell);
            air += dt * airSlope(massFlow, conductance, inletK, midMass, midAir, midShell);
            shell += dt * shellSlope(conductance, midAir, midShell);
            mass += massFlow * dt;
        }
        return new double[] {mass, air};
    }

    private static double airSlope(
            double massFlow, double conductance, double inletK, double mass, double air, double shell) {
        return (massFlow * (CP * inletK - CV * air) - conductance * (air - shell)) / (mass * CV);
    }

    private double shellSlope(double conductance, double air, double shell) {
        double outside = OUTSIDE_W_PER_M2K * areaM2 * (shell - ambientK);
        return (conductance * (air - shell) - outside) / (SHELL_J_PER_M2K * areaM2);
    }
}
