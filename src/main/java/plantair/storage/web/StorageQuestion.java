package plantair.storage.web;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Control;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.VesselVolume;
import plantair.supply.AirEvent;
import plantair.supply.BandEffect;
import plantair.supply.StoredAir;
import plantair.supply.SwitchCycles;

/**
 * A question about storage, all understood.
 *
 * @param station barometric pressure of the site
 * @param volume of the receivers chosen and typed; null where there is none
 * @param cutOut null where it was left out
 * @param cutIn at which an event may begin
 * @param lowest that the users bear
 * @param event what it takes; null where there is none
 * @param lasts how long; null to be told how long it can
 * @param steady what else takes air
 * @param capacity of the machines that run
 * @param capacityTyped whether it was typed here
 * @param leaks of the site
 * @param leaksFrom where they come from
 * @param switching the machines that switch
 * @param left tags of machines chosen whose tests were made too far from that pressure
 */
record StorageQuestion(
        AbsolutePressure station,
        @Nullable VesselVolume volume,
        @Nullable GaugePressure cutOut,
        GaugePressure cutIn,
        GaugePressure lowest,
        @Nullable FlowRate event,
        @Nullable Elapsed lasts,
        FlowRate steady,
        MeasuredFlow capacity,
        boolean capacityTyped,
        MeasuredFlow leaks,
        Leaks leaksFrom,
        List<Switching> switching,
        List<String> left) {

    /** Where the leaks come from. */
    enum Leaks {
        /** Typed here. */
        TYPED,
        /** The newest leak test. */
        TESTED,
        /** Nobody knows; taken as none. */
        NONE
    }

    /**
     * A machine that switches.
     *
     * @param label how the plant calls it
     * @param capacity what it delivers, above zero
     * @param control what is switched; null where it does not switch, or nobody knows
     */
    record Switching(String label, FlowRate capacity, SwitchCycles.@Nullable Control control) {}

    /** The control of a machine as far as it switches. */
    static SwitchCycles.@Nullable Control switched(Control control) {
        return switch (control) {
            case START_STOP -> SwitchCycles.Control.START_STOP;
            case LOAD_UNLOAD -> SwitchCycles.Control.LOAD_UNLOAD;
            case MODULATING, VARIABLE_SPEED, UNKNOWN -> null;
        };
    }

    /** From the pressure at which an event may begin to the lowest. */
    StoredAir fall() {
        return new StoredAir(station, cutIn, lowest);
    }

    /** What takes air all the time: steady use and leaks. */
    FlowRate goesOn() {
        return AirEvent.goesOn(steady, leaks);
    }

    Optional<AirEvent> airEvent() {
        return Optional.ofNullable(event).map(flow -> new AirEvent(fall(), flow, steady, leaks, capacity));
    }

    /** Cut-in to cut-out. */
    Optional<StoredAir> band() {
        return Optional.ofNullable(cutOut).map(high -> new StoredAir(station, high, cutIn));
    }

    /** What a mean pressure above the lowest costs. */
    Optional<BandEffect> effect() {
        return Optional.ofNullable(cutOut)
                .map(high -> BandEffect.between(station, lowest, GaugePressure.mid(cutIn, high)));
    }
}
