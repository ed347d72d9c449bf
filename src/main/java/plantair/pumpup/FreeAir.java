package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.PressureDifference;
import plantair.quantity.StandardState;
import plantair.quantity.VesselVolume;

/** Free air delivered into a closed volume: the hand method (M1), the full balance (M7), and standard flow (M11). */
public final class FreeAir {

    private FreeAir() {}

    /**
     * The hand method (M1): q = V (p2 − p1)/(Pa t). Ignores air temperature, humidity and compressibility. Source: common
     * practice; the pump-up methods of trade and energy-audit handbooks.
     *
     * @param rise p2 − p1, above zero
     * @return flow at intake conditions, if the receiver air ends as warm as the intake
     */
    public static FlowRate byHand(
            VesselVolume volume, PressureDifference rise, AbsolutePressure station, Elapsed elapsed) {
        return new FlowRate(volume.cubicMetres() * rise.pascals() / (station.pascals() * elapsed.seconds()));
    }

    /**
     * The mass balance of dry air (M7): q = (V/t) · Ta/(Pa − φ e_s(Ta)) · [D2/(Z2 T2) − D1/(Z1 T1)]. With equal
     * temperatures, dry air and Z = 1 it is M1. Source: ideal-gas mass balance with virial correction; derivation in
     * docs/method.md.
     *
     * @return flow at intake conditions; below zero when the air in the receiver became less
     */
    public static FlowRate byBalance(
            VesselVolume volume, Elapsed elapsed, Intake intake, ReceiverState start, ReceiverState stop) {
        double perSecond = volume.cubicMetres() / elapsed.seconds();
        double intakeFactor = intake.temperature().kelvin() / intake.dryPa();
        return new FlowRate(perSecond * intakeFactor * (stop.content() - start.content()));
    }

    /**
     * The same dry mass a second as a flow at a named state (M11): q · (Pa − φ e_s(Ta))/(p_ref − φ_ref e_s(T_ref)) ·
     * T_ref/Ta. Source: trade conversion of actual to standard flow; checked against a published worked example.
     *
     * @param basis one of {@link FlowBasis#standards()}
     * @throws IllegalArgumentException when the basis is not a standard flow
     */
    public static FlowRate standard(FlowRate atIntake, Intake intake, FlowBasis basis) {
        StandardState state = basis.state()
                .orElseThrow(() -> new IllegalArgumentException("basis must be a standard flow: " + basis));
        Intake reference = new Intake(state.pressure(), state.temperature(), state.humidity());
        double pressures = intake.dryPa() / reference.dryPa();
        double temperatures =
                state.temperature().kelvin() / intake.temperature().kelvin();
        return new FlowRate(atIntake.cubicMetresPerSecond() * pressures * temperatures);
    }
}
