package plantair.supply;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.GaugePressure;

/**
 * Free air that a tool needs above sea level (S13). At the same gauge pressure it takes air in proportion to the absolute
 * pressure, and each volume of free air holds less: factor (p + Pa)/(p + P0) · P0/Pa, P0 = 101,325 Pa where its use was
 * stated. 1.17 at 90 psig and 5,000 ft.
 *
 * <p>Source: choked flow of S11. Checked by: ChokedNozzleReferenceTests.
 */
public final class ToolAltitude {

    private static final AbsolutePressure SEA_LEVEL = new AbsolutePressure(101_325);

    private ToolAltitude() {}

    /**
     * What a use stated at sea level is multiplied by.
     *
     * @param tool pressure at the tool
     * @param station barometric pressure of the place
     */
    public static double factor(GaugePressure tool, AbsolutePressure station) {
        double pressures = tool.above(station).pascals() / tool.above(SEA_LEVEL).pascals();
        return pressures * SEA_LEVEL.pascals() / station.pascals();
    }
}
