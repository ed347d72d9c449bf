package plantair.export;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.Power;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * How a reading becomes a number in SI.
 *
 * @param suffix end of the column's name, such as {@code _pa}
 * @param quantity the quantity of a reading
 * @param number its number in SI
 */
public record Si<Q>(String suffix, Function<Entered, Q> quantity, ToDoubleFunction<Q> number) {

    static final Si<GaugePressure> GAUGE = new Si<>("_pa", GaugePressure::of, GaugePressure::pascals);
    static final Si<AbsolutePressure> ABSOLUTE = new Si<>("_pa", AbsolutePressure::of, AbsolutePressure::pascals);
    static final Si<Temperature> TEMPERATURE = new Si<>("_k", Temperature::of, Temperature::kelvin);
    static final Si<Elapsed> TIME = new Si<>("_s", Elapsed::of, Elapsed::seconds);
    static final Si<Length> LENGTH = new Si<>("_m", Length::of, Length::metres);
    static final Si<VesselVolume> VOLUME = new Si<>("_m3", VesselVolume::of, VesselVolume::cubicMetres);
    static final Si<Power> POWER = new Si<>("_w", Power::of, Power::watts);
    static final Si<FlowRate> FLOW = new Si<>("_m3_per_s", FlowRate::of, FlowRate::cubicMetresPerSecond);

    @Nullable
    Double of(@Nullable Entered entered) {
        return entered == null ? null : number.applyAsDouble(quantity.apply(entered));
    }
}
