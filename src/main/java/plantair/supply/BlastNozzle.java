package plantair.supply;

import java.util.Optional;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.PressureUnit;

/**
 * Nozzles for abrasive blasting with their use of air in cfm, measured while blasting, which is less than with air alone (S12).
 * Between the printed pressures it is taken along a straight line. A nozzle wears to the next bore and uses that much.
 *
 * <p>Source: table of the blasting trade, found alike on two dealers' pages; no standard. Most agree with the surface
 * finishing guidebook of Metal Finishing, 2011. Checked by: ChokedNozzleReferenceTests: 0.77 to 0.84 of a choked nozzle.
 */
public enum BlastNozzle {
    /** 1/8 in. */
    NO_2(2, 11, 13, 15, 17, 18.5, 20, 25),
    /** 3/16 in. */
    NO_3(3, 26, 30, 33, 38, 41, 45, 55),
    /** 1/4 in. */
    NO_4(4, 47, 54, 61, 68, 74, 81, 98),
    /** 5/16 in. */
    NO_5(5, 77, 89, 101, 113, 126, 137, 168),
    /** 3/8 in. */
    NO_6(6, 108, 126, 143, 161, 173, 196, 237),
    /** 7/16 in. */
    NO_7(7, 147, 170, 194, 217, 240, 254, 314),
    /** 1/2 in. */
    NO_8(8, 195, 224, 252, 280, 309, 338, 409);

    /** Reserve that the trade adds when it sizes a compressor for blasting; the same pages. */
    public static final double RESERVE = 0.5;

    private static final double[] PSI = {50, 60, 70, 80, 90, 100, 125};
    private static final double SIXTEENTH = 1.0 / 16;

    private final Length bore;
    private final double[] cfm;

    BlastNozzle(int sixteenths, double... cfm) {
        this.bore = Length.of(sixteenths * SIXTEENTH, LengthUnit.INCH);
        this.cfm = cfm;
    }

    /** Diameter of its narrowest place when new. */
    public Length bore() {
        return bore;
    }

    /**
     * Its use of air.
     *
     * @param pressure at the nozzle
     * @return empty outside 50 to 125 psi, where the table ends
     */
    public Optional<FlowRate> flow(GaugePressure pressure) {
        double psi = pressure.in(PressureUnit.PSI);
        for (int i = 0; i + 1 < PSI.length; i++) {
            if (psi >= PSI[i] - ROUNDING && psi <= PSI[i + 1] + ROUNDING) {
                double part = (psi - PSI[i]) / (PSI[i + 1] - PSI[i]);
                return Optional.of(FlowRate.of(cfm[i] + part * (cfm[i + 1] - cfm[i]), FlowUnit.CFM));
            }
        }
        return Optional.empty();
    }

    /** Room for the last digits of a pressure typed in another unit. */
    private static final double ROUNDING = 1e-6;

    /** The next bore, to which it wears; empty for the widest. */
    public Optional<BlastNozzle> worn() {
        return ordinal() + 1 < values().length ? Optional.of(values()[ordinal() + 1]) : Optional.empty();
    }
}
