package plantair.cost;

import plantair.pumpup.SpecificPower;
import plantair.quantity.Rounded;
import plantair.quantity.SpecificPowerUnit;

/** Specific power as text; an uncertainty is one standard uncertainty. */
public final class PowerText {

    private static final int PLACES = 2;

    private PowerText() {}

    /** The number in this unit. */
    public static String number(SpecificPower power, double relativeU, SpecificPowerUnit unit) {
        double value = power.in(unit);
        double u = value * relativeU;
        return u > 0
                ? Rounded.toUncertainty(value, u) + " ± " + Rounded.toUncertainty(u, u)
                : Rounded.places(value, PLACES);
    }

    /** With its unit. */
    public static String text(SpecificPower power, double relativeU, SpecificPowerUnit unit) {
        return number(power, relativeU, unit) + " " + unit.symbol();
    }
}
