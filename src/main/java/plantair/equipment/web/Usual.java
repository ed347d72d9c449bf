package plantair.equipment.web;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;
import plantair.web.Warnings;

/** What is usual in a compressed-air plant; beyond it a slip of number or unit is likely. Common practice, no source. */
enum Usual {
    /** Motor power, kW. */
    POWER(0.1, 2_000, typed -> Power.of(typed).in(PowerUnit.KW)),
    /** Motor voltage, V. */
    VOLTAGE(12, 15_000, Entered::value),
    /** Motor current, A. */
    CURRENT(0.5, 3_000, Entered::value),
    /** Supply frequency, Hz. */
    FREQUENCY(45, 65, Entered::value),
    /** Shaft speed, rpm. */
    SPEED(100, 40_000, Entered::value),
    /** Pressure in the plant, kPa gauge. */
    PRESSURE(200, 4_500, typed -> GaugePressure.of(typed).in(PressureUnit.KPA)),
    /** Flow of one machine, L/s. */
    FLOW(0.3, 5_000, typed -> FlowRate.of(typed).in(FlowUnit.LITRE_PER_SECOND)),
    /** Volume of one receiver, L. */
    RECEIVER(5, 200_000, typed -> VesselVolume.of(typed).in(VolumeUnit.LITRE)),
    /** Volume of a cooler, dryer or filter, L. */
    PIECE(0.05, 20_000, typed -> VesselVolume.of(typed).in(VolumeUnit.LITRE)),
    /** Length of a pipe, m. */
    LENGTH(0.1, 2_000, typed -> Length.of(typed).in(LengthUnit.METRE)),
    /** Bore of a pipe, mm. */
    BORE(6, 600, typed -> Length.of(typed).in(LengthUnit.MILLIMETRE)),
    /** Wall of a receiver, mm. */
    WALL(1, 40, typed -> Length.of(typed).in(LengthUnit.MILLIMETRE));

    private final double least;
    private final double most;
    private final ToDoubleFunction<Entered> value;

    Usual(double least, double most, ToDoubleFunction<Entered> value) {
        this.least = least;
        this.most = most;
        this.value = value;
    }

    /** Asks to confirm what is not usual; the text says in words what would be. */
    void ask(Warnings warnings, String path, Optional<Entered> typed) {
        if (typed.isPresent() && !isUsual(value.applyAsDouble(typed.get()))) {
            warnings.add(path, "unusual." + name(), typed.get().toString());
        }
    }

    private boolean isUsual(double number) {
        return number >= least && number <= most;
    }
}
