package plantair.supply;

import plantair.quantity.FlowRate;
import plantair.quantity.VesselVolume;

/**
 * How often a compressor switches (S17): on for S/(C − D), off for S/D, where S is the free air stored between cut-in and
 * cut-out; 3600 D (C − D)/(C S) cycles an hour, most at half load: 900 C/S.
 *
 * <p>Source: mass balance. Checked by: StoredAirReferenceTests.
 *
 * @param band cut-out and cut-in
 * @param volume of the receivers, above zero
 * @param capacity what the compressor delivers, above zero
 */
public record SwitchCycles(StoredAir band, VesselVolume volume, FlowRate capacity) {

    private static final double SECONDS_AN_HOUR = 3600;

    /** What is switched, and how often an hour it bears; trade literature, which differs: 6 to 10 starts, one load a minute. */
    public enum Control {
        /** The motor. */
        START_STOP(10),
        /** The inlet or a valve, the motor turning on. */
        LOAD_UNLOAD(60);

        private final double mostPerHour;

        Control(double mostPerHour) {
            this.mostPerHour = mostPerHour;
        }

        /** Cycles an hour above which it cycles too often. */
        public double mostPerHour() {
            return mostPerHour;
        }
    }

    /** @throws IllegalArgumentException when volume or capacity is not above zero */
    public SwitchCycles {
        if (!(volume.cubicMetres() > 0 && capacity.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("volume and capacity must be positive: " + volume + ", " + capacity);
        }
    }

    /** Cycles an hour at a steady demand; zero where it is none, or as much as the capacity or more. */
    public double perHour(FlowRate demand) {
        double load = demand.over(capacity);
        return load > 0 && load < 1 ? worst() * 4 * load * (1 - load) : 0;
    }

    /** Most cycles an hour, at half load. */
    public double worst() {
        return SECONDS_AN_HOUR
                / 4
                * capacity.cubicMetresPerSecond()
                / band.in(volume).cubicMetres();
    }

    /** Whether it would switch too often at some demand. */
    public boolean isShort(Control control) {
        return worst() > control.mostPerHour();
    }

    /** Whether it switches too often at this demand. */
    public boolean isShort(Control control, FlowRate demand) {
        return perHour(demand) > control.mostPerHour();
    }

    /** Smallest volume with which it never would. */
    public VesselVolume leastVolume(Control control) {
        return new VesselVolume(volume.cubicMetres() * worst() / control.mostPerHour());
    }
}
