package plantair.supply;

import java.util.List;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;

/**
 * How much a found leak is thought to lose.
 *
 * @param label how the plant calls it
 * @param flow free air, zero or more
 * @param by how it was estimated
 */
public record LeakEstimate(String label, FlowRate flow, SizedBy by) {

    /** One temperature before the hole and at the intake. */
    private static final Temperature AIR = Temperature.of(20, TemperatureUnit.CELSIUS);

    /**
     * Free air through a sharp-edged hole (S11), the air at 20 °C before and behind it.
     *
     * @throws IllegalArgumentException when there is no hole, or the flow is not choked
     */
    public static FlowRate ofHole(Length bore, GaugePressure pressure, AbsolutePressure station) {
        return ChokedNozzle.freeAir(bore, ChokedNozzle.SHARP, pressure, AIR, station, AIR);
    }

    /** With its uncertainty. */
    public MeasuredFlow measured() {
        return MeasuredFlow.of(flow, by.relativeU(), FlowBasis.INTAKE);
    }

    /** All of them (S9): what was estimated in one way is taken as wrong alike. Zero without any. */
    public static MeasuredFlow sum(List<LeakEstimate> leaks) {
        List<CapacityPart> parts = leaks.stream()
                .map(leak -> new CapacityPart(
                        leak.label(),
                        leak.flow(),
                        0,
                        List.of(new SharedPart(leak.by().name(), leak.by().relativeU()))))
                .toList();
        return new Capacity(parts, FlowBasis.INTAKE).total();
    }
}
