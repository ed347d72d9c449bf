package plantair.leak;

import java.util.List;

/**
 * One cycle of a compressor that feeds nothing but leaks, in three parts.
 *
 * @param loadSeconds compressing, above zero
 * @param unloadSeconds turning without compressing, zero or more
 * @param offSeconds standing still, zero or more; together with the unloaded time above zero
 */
public record LoadCycle(double loadSeconds, double unloadSeconds, double offSeconds) {

    /** @throws IllegalArgumentException when outside the range of a parameter */
    public LoadCycle {
        boolean inRange = loadSeconds > 0 && unloadSeconds >= 0 && offSeconds >= 0 && unloadSeconds + offSeconds > 0;
        if (!inRange || !(loadSeconds + unloadSeconds + offSeconds <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "no cycle: " + loadSeconds + " s, " + unloadSeconds + " s, " + offSeconds + " s");
        }
    }

    /**
     * All of some cycles together.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static LoadCycle sum(List<LoadCycle> cycles) {
        double load = 0;
        double unload = 0;
        double off = 0;
        for (LoadCycle cycle : cycles) {
            load += cycle.loadSeconds;
            unload += cycle.unloadSeconds;
            off += cycle.offSeconds;
        }
        return new LoadCycle(load, unload, off);
    }

    /** What the share would be, had the time standing been counted with the loaded time: a mistake, told as one (S4). */
    public double shareIfOffWereLoaded() {
        return (loadSeconds + offSeconds) / seconds();
    }

    /** Unloaded or standing, s: in both no air is compressed. */
    public double idleSeconds() {
        return unloadSeconds + offSeconds;
    }

    /** The whole of it, s. */
    public double seconds() {
        return loadSeconds + idleSeconds();
    }
}
