package plantair.supply;

import java.util.Optional;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.VesselVolume;

/**
 * A use of air that lasts a while and that receivers are to carry (S15, S16). What is short is the event, the steady use and
 * the leaks together, less the capacity; its uncertainty is that of the capacity and the leaks, taken as independent.
 *
 * <p>Source: own. Checked by: AirEventTests.
 *
 * @param band from the pressure at which the event begins to the lowest that the users bear
 * @param event what the event takes while it lasts, above zero
 * @param steady what else takes air all the time, zero or more
 * @param leaks of the plant, on the basis of the capacity
 * @param capacity of the compressors that run
 */
public record AirEvent(StoredAir band, FlowRate event, FlowRate steady, MeasuredFlow leaks, MeasuredFlow capacity) {

    /** @throws IllegalArgumentException when a flow is below zero, the event is none, or the bases differ */
    public AirEvent {
        boolean inRange = event.cubicMetresPerSecond() > 0
                && steady.cubicMetresPerSecond() >= 0
                && leaks.flow().cubicMetresPerSecond() >= 0
                && capacity.flow().cubicMetresPerSecond() >= 0;
        if (!inRange || leaks.basis() != capacity.basis()) {
            throw new IllegalArgumentException("no event: " + event + ", " + steady + ", " + leaks + ", " + capacity);
        }
    }

    /** All that takes air while the event lasts. */
    public FlowRate demand() {
        return plus(event, goesOn());
    }

    /** What takes air when it is over: steady use and leaks. */
    public FlowRate goesOn() {
        return goesOn(steady, leaks);
    }

    /** The same without any event. */
    public static FlowRate goesOn(FlowRate steady, MeasuredFlow leaks) {
        return plus(steady, leaks.flow());
    }

    /** Demand less capacity; zero or less where nothing is short. */
    public FlowRate shortfall() {
        return plus(demand(), capacity.flow().times(-1));
    }

    /** Relative standard uncertainty of what is short, and so of a time or a volume; zero where nothing is short. */
    public double relativeU() {
        double one = capacity.standardUncertainty().cubicMetresPerSecond();
        double other = leaks.standardUncertainty().cubicMetresPerSecond();
        double of = shortfall().cubicMetresPerSecond();
        return of > 0 ? StrictMath.sqrt(one * one + other * other) / of : 0;
    }

    /** The volume that carries it for a time (S15); zero where nothing is short. */
    public VesselVolume volumeFor(Elapsed time) {
        return band.volumeFor(time, demand(), capacity.flow());
    }

    /** Whether a volume carries it for a time, as far as the uncertainty lets be told (S14). */
    public Margin.Verdict carried(VesselVolume volume, Elapsed time) {
        double needed = volumeFor(time).cubicMetres();
        return Margin.verdict(volume.cubicMetres() - needed, relativeU() * needed);
    }

    /** How long a volume carries it (S15); empty where nothing is short or the volume is zero. */
    public Optional<Elapsed> holds(VesselVolume volume) {
        return band.holds(volume, demand(), capacity.flow());
    }

    /** How long it takes to be full again afterwards (S16); empty where nothing is left to fill it with. */
    public Optional<Elapsed> refills(VesselVolume volume) {
        return band.refills(volume, goesOn(), capacity.flow());
    }

    private static FlowRate plus(FlowRate one, FlowRate other) {
        return new FlowRate(one.cubicMetresPerSecond() + other.cubicMetresPerSecond());
    }
}
