package plantair.leaktest;

import org.jspecify.annotations.Nullable;

/**
 * A found leak with its last step.
 *
 * @param leak as it was found
 * @param last null when nothing was done yet
 */
public record FoundLeakLine(FoundLeak leak, @Nullable LeakStep last) {

    /** How it stands. */
    public LeakStanding standing() {
        return LeakStanding.of(last);
    }
}
