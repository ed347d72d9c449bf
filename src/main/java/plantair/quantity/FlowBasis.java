package plantair.quantity;

import static plantair.quantity.PressureUnit.KPA;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.TemperatureUnit.CELSIUS;
import static plantair.quantity.TemperatureUnit.FAHRENHEIT;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a flow figure refers to. Two flows may be compared only on one basis. */
public enum FlowBasis {
    /** Free air at the pressure, temperature and humidity of the compressor's own intake (acfm, icfm, FAD). */
    INTAKE(null),

    /** ISO 1217 and ISO 8778 reference: 100 kPa, 20 °C, dry (from memory). */
    STANDARD_100KPA_20C_DRY(StandardState.of(100, KPA, 20, CELSIUS, 0)),

    /** US trade: 14.5 psia, 68 °F, dry. Source: trade encyclopaedia, confirmed from memory. */
    STANDARD_14_5PSIA_68F_DRY(StandardState.of(14.5, PSI, 68, FAHRENHEIT, 0)),

    /** US trade: 14.7 psia, 68 °F, 36 % relative humidity; 0.075 lb/ft³. */
    STANDARD_14_7PSIA_68F_36RH(StandardState.of(14.7, PSI, 68, FAHRENHEIT, 0.36)),

    /** Older US usage: 14.696 psia, 60 °F, dry. */
    STANDARD_14_696PSIA_60F_DRY(StandardState.of(14.696, PSI, 60, FAHRENHEIT, 0)),

    /** DIN 1343, the normal cubic metre: 101.325 kPa, 0 °C, dry. */
    NORMAL_101_325KPA_0C_DRY(StandardState.of(101.325, KPA, 0, CELSIUS, 0)),

    /** Swept volume times speed: not a delivery at all. */
    DISPLACEMENT(null),

    /** The source does not say. */
    UNKNOWN(null);

    private final @Nullable StandardState state;

    FlowBasis(@Nullable StandardState state) {
        this.state = state;
    }

    /** The named state of a standard flow; empty for the others. */
    public Optional<StandardState> state() {
        return Optional.ofNullable(state);
    }

    /** The bases that are a standard flow, in the order of this enum. */
    public static Stream<FlowBasis> standards() {
        return Stream.of(values()).filter(basis -> basis.state != null);
    }
}
