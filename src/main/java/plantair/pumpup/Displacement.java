package plantair.pumpup;

import plantair.quantity.FlowRate;
import plantair.quantity.Length;
import plantair.quantity.ShaftSpeed;

/** Volume swept by the pistons that take in free air (M16). */
public final class Displacement {

    private static final double SECONDS_PER_MINUTE = 60;

    private Displacement() {}

    /**
     * Piston displacement π/4 b² s n N of a single-acting machine (M16). Source: geometry.
     *
     * @param bore of a cylinder, above zero
     * @param stroke above zero
     * @param speed of the shaft
     * @param cylinders of the first stage only: the others take in air that was counted already
     * @return swept volume a second
     * @throws IllegalArgumentException when bore, stroke or number of cylinders is not above zero
     */
    public static FlowRate of(Length bore, Length stroke, ShaftSpeed speed, int cylinders) {
        if (!(bore.metres() > 0 && stroke.metres() > 0 && cylinders > 0)) {
            throw new IllegalArgumentException("bore, stroke and cylinders must be positive: " + bore + ", " + stroke);
        }
        double swept = Math.PI / 4 * bore.metres() * bore.metres() * stroke.metres() * cylinders;
        return new FlowRate(swept * speed.perMinute() / SECONDS_PER_MINUTE);
    }

    /**
     * Volumetric efficiency q/displacement (M16).
     *
     * @param freeAir free air delivered at the same shaft speed, at intake conditions
     * @param displacement above zero
     * @return 0.8 for 80 %; above 1 cannot be
     * @throws IllegalArgumentException when the displacement is not above zero
     */
    public static double volumetricEfficiency(FlowRate freeAir, FlowRate displacement) {
        if (!(displacement.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("displacement must be positive: " + displacement);
        }
        return freeAir.cubicMetresPerSecond() / displacement.cubicMetresPerSecond();
    }
}
