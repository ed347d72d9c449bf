package plantair.supply;

import java.util.Optional;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.FreeAirVolume;
import plantair.quantity.GaugePressure;
import plantair.quantity.VesselVolume;

/**
 * Air that receivers give while their pressure falls (S15, S16): V (p_hi − p_lo)/Pa of free air. An event that takes more than
 * is supplied lasts t = V (p_hi − p_lo)/(Pa (D − C)), or needs V = t Pa (D − C)/(p_hi − p_lo). Equal temperatures before and
 * after are taken for granted; air that cools as it expands gives less at once.
 *
 * <p>Source: mass balance; the form of energy guides and fluid power texts (read in copies). Checked by: StoredAirReferenceTests.
 *
 * @param station barometric pressure of the place
 * @param high gauge pressure at first, above low
 * @param low lowest that the users bear
 */
public record StoredAir(AbsolutePressure station, GaugePressure high, GaugePressure low) {

    /** @throws IllegalArgumentException when high is not above low */
    public StoredAir {
        if (!(high.pascals() > low.pascals())) {
            throw new IllegalArgumentException("high must be above low: " + high + ", " + low);
        }
    }

    /** Free air in a volume between the two pressures. */
    public FreeAirVolume in(VesselVolume volume) {
        return new FreeAirVolume(volume.cubicMetres() * perVolume());
    }

    /**
     * How long a volume carries an event.
     *
     * @return empty where nothing is short, so that it never ends, or the volume is zero
     */
    public Optional<Elapsed> holds(VesselVolume volume, FlowRate demand, FlowRate supply) {
        double shortfall = demand.cubicMetresPerSecond() - supply.cubicMetresPerSecond();
        return shortfall > 0 && volume.cubicMetres() > 0
                ? Optional.of(new Elapsed(volume.cubicMetres() * perVolume() / shortfall))
                : Optional.empty();
    }

    /** The volume that carries an event; zero where nothing is short. */
    public VesselVolume volumeFor(Elapsed event, FlowRate demand, FlowRate supply) {
        double shortfall = Math.max(0, demand.cubicMetresPerSecond() - supply.cubicMetresPerSecond());
        return new VesselVolume(event.seconds() * shortfall / perVolume());
    }

    /**
     * How long it takes to fill the volume again after an event.
     *
     * @param demand that goes on meanwhile
     * @return empty where nothing is left to fill it with, or the volume is zero
     */
    public Optional<Elapsed> refills(VesselVolume volume, FlowRate demand, FlowRate supply) {
        return holds(volume, supply, demand);
    }

    double perVolume() {
        return (high.pascals() - low.pascals()) / station.pascals();
    }
}
