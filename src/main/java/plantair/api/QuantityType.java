package plantair.api;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.Unit;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;

/**
 * A quantity that can stand in a request.
 *
 * @param type its class
 * @param units those it is taken in
 * @param make the quantity from a number in a unit
 * @param si the number in SI
 */
record QuantityType<Q, U extends Unit>(
        Class<Q> type, List<U> units, BiFunction<Double, U, Q> make, ToDoubleFunction<Q> si) {

    static final List<QuantityType<?, ?>> ALL = List.of(
            of(GaugePressure.class, GaugePressure::of, GaugePressure::pascals, List.of(PressureUnit.values())),
            of(AbsolutePressure.class, AbsolutePressure::of, AbsolutePressure::pascals, List.of(PressureUnit.values())),
            of(
                    PressureDifference.class,
                    PressureDifference::of,
                    PressureDifference::pascals,
                    List.of(PressureUnit.values())),
            of(VesselVolume.class, VesselVolume::of, VesselVolume::cubicMetres, List.of(VolumeUnit.values())),
            of(FlowRate.class, FlowRate::of, FlowRate::cubicMetresPerSecond, List.of(FlowUnit.values())),
            of(Temperature.class, Temperature::of, Temperature::kelvin, List.of(TemperatureUnit.values())),
            of(Elapsed.class, Elapsed::of, Elapsed::seconds, List.of(DurationUnit.SECOND, DurationUnit.MINUTE)),
            of(Length.class, Length::of, Length::metres, List.of(LengthUnit.values())),
            of(Power.class, Power::of, Power::watts, List.of(PowerUnit.values())),
            of(
                    RelativeHumidity.class,
                    (percent, unit) -> new RelativeHumidity(percent / 100),
                    RelativeHumidity::fraction,
                    List.of(FixedUnit.PERCENT)),
            of(ShaftSpeed.class, (rpm, unit) -> new ShaftSpeed(rpm), ShaftSpeed::perMinute, List.of(FixedUnit.RPM)));

    private static <Q, U extends Unit> QuantityType<Q, U> of(
            Class<Q> type, BiFunction<Double, U, Q> make, ToDoubleFunction<Q> si, List<U> units) {
        return new QuantityType<>(type, units, make, si);
    }

    /** The quantity of this class; empty when it is something else. */
    static Optional<QuantityType<?, ?>> of(Class<?> type) {
        return ALL.stream().filter(known -> known.type() == type).findFirst();
    }

    /** What may stand as unit. */
    List<String> codes() {
        return units.stream().map(Unit::code).toList();
    }

    /** A number in one of the units; empty when it is not one of them. */
    Optional<Measured<Q>> measured(double number, String code) {
        return units.stream()
                .filter(unit -> unit.code().equals(code))
                .map(unit -> new Measured<>(this, number, unit))
                .findFirst();
    }

    /**
     * A number in a unit of its quantity.
     *
     * @param type the quantity
     * @param number as sent
     * @param unit as sent
     */
    record Measured<Q>(QuantityType<Q, ?> type, double number, Unit unit) {

        /**
         * The quantity.
         *
         * @throws IllegalArgumentException when the number is outside what the quantity can be
         */
        Q quantity() {
            return type.make(number, unit);
        }

        /** The same in SI. */
        double si() {
            return type.si.applyAsDouble(quantity());
        }
    }

    private Q make(double number, Unit unit) {
        return units.stream()
                .filter(known -> known == unit)
                .map(known -> make.apply(number, known))
                .findFirst()
                .orElseThrow();
    }
}
