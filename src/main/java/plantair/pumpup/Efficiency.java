package plantair.pumpup;

import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.Power;

/**
 * What a delivered flow says of the machine that is to have delivered it (M16 to M18). An efficiency that cannot be
 * shows that a reading is wrong.
 *
 * @param volumetric free air delivered over displacement; null when the displacement is not known
 * @param leastPower isentropic power for the flow
 * @param isentropic least power over shaft power; null when neither shaft power nor plate is known
 * @param shaftPower measured, else what the motor's plate allows; null when neither is known
 * @param fromPlate true when the shaft power is that of the plate
 */
public record Efficiency(
        @Nullable Double volumetric,
        Power leastPower,
        @Nullable Double isentropic,
        @Nullable Power shaftPower,
        boolean fromPlate) {

    /** Ratio of specific heats of air; textbook. */
    private static final double KAPPA = 1.4;

    /** Best of small piston machines; common practice, no source. */
    private static final double UNLIKELY_ISENTROPIC = 0.85;

    private static final double UNLIKELY_VOLUMETRIC = 0.95;

    /** A motor may run above its plate by its service factor; 1.15 is usual, common practice, no source. */
    private static final double OVERLOAD = 1.15;

    /**
     * The efficiencies of a machine at a flow.
     *
     * @param freeAir free air delivered at the speed of the test, zero or more
     * @param station absolute pressure at the intake
     * @param mid absolute pressure the flow belongs to (M12), not below station
     * @param machine what is known of it
     * @throws IllegalArgumentException when the flow or the rise is below zero
     */
    public static Efficiency of(FlowRate freeAir, AbsolutePressure station, AbsolutePressure mid, MachineData machine) {
        Power least = leastPower(freeAir, station, mid);
        FlowRate swept = machine.displacement();
        boolean fromPlate = machine.shaftPower() == null && machine.motorPlate() != null;
        Power shaft = fromPlate ? machine.motorPlate() : machine.shaftPower();
        return new Efficiency(
                swept == null ? null : Displacement.volumetricEfficiency(freeAir, swept),
                least,
                shaft == null ? null : isentropic(least, shaft),
                shaft,
                fromPlate);
    }

    /**
     * Least power for a flow, without loss and without giving off heat: q Pa κ/(κ−1) [(P/Pa)^((κ−1)/κ) − 1], κ = 1.4
     * (M17). Source: textbook thermodynamics; one stage.
     *
     * @throws IllegalArgumentException when the flow or the rise is below zero
     */
    public static Power leastPower(FlowRate freeAir, AbsolutePressure station, AbsolutePressure mid) {
        return work(freeAir, station, mid, KAPPA);
    }

    /** The same along any polytrope. */
    static Power work(FlowRate freeAir, AbsolutePressure from, AbsolutePressure to, double exponent) {
        if (!(freeAir.cubicMetresPerSecond() >= 0 && to.pascals() >= from.pascals())) {
            throw new IllegalArgumentException("flow and rise must not be negative: " + freeAir + ", " + to);
        }
        double part = (exponent - 1) / exponent;
        double perVolume = from.pascals() / part * (StrictMath.pow(to.pascals() / from.pascals(), part) - 1);
        return new Power(freeAir.cubicMetresPerSecond() * perVolume);
    }

    /**
     * Isentropic efficiency: least power over shaft power (M17).
     *
     * @throws IllegalArgumentException when the shaft power is zero
     */
    public static double isentropic(Power least, Power shaft) {
        if (!(shaft.watts() > 0)) {
            throw new IllegalArgumentException("shaft power must be positive: " + shaft);
        }
        return least.watts() / shaft.watts();
    }

    /** What its volumetric efficiency says: above 1 impossible, above 0.95 unlikely; possible when not known. */
    public Judgement volumetricJudgement() {
        return volumetric == null ? Judgement.POSSIBLE : Judgement.of(volumetric, UNLIKELY_VOLUMETRIC);
    }

    /**
     * What its isentropic efficiency says: above 1 impossible, above 0.85 unlikely; possible when not known. A motor of
     * which only the plate is known may run 15 % above it.
     */
    public Judgement isentropicJudgement() {
        if (isentropic == null) {
            return Judgement.POSSIBLE;
        }
        return Judgement.of(fromPlate ? isentropic / OVERLOAD : isentropic, UNLIKELY_ISENTROPIC);
    }

    /** The worse of both. */
    public Judgement judgement() {
        return volumetricJudgement().worse(isentropicJudgement());
    }
}
