package plantair.pumpup;

import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;
import plantair.quantity.SpecificPowerUnit;

/**
 * Power for each flow of free air (M18), which is energy for each volume.
 *
 * @param joulesPerCubicMetre W/(m³/s) = J/m³; zero or more
 */
public record SpecificPower(double joulesPerCubicMetre) {

    /**
     * Power over flow (M18).
     *
     * @param input whichever power it is told of: electric, shaft
     * @param freeAir above zero
     * @throws IllegalArgumentException when the flow is not above zero
     */
    public static SpecificPower of(Power input, FlowRate freeAir) {
        if (!(freeAir.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("flow must be positive: " + freeAir);
        }
        return new SpecificPower(input.watts() / freeAir.cubicMetresPerSecond());
    }

    /**
     * A specific power as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static SpecificPower of(Entered entered) {
        if (!(entered.unit() instanceof SpecificPowerUnit unit)) {
            throw new IllegalArgumentException(entered.text() + " is no specific power");
        }
        return of(Power.of(entered.value(), PowerUnit.KW), unit.flow());
    }

    /** The number in this unit. */
    public double in(SpecificPowerUnit unit) {
        return forFlow(unit.flow()).in(PowerUnit.KW);
    }

    /** The power that a flow needs: for 100 cfm, for 1 m³/min. */
    public Power forFlow(FlowRate flow) {
        return new Power(joulesPerCubicMetre * flow.cubicMetresPerSecond());
    }
}
