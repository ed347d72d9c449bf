package plantair.leaktest;

import org.jspecify.annotations.Nullable;

/** How a found leak stands: what its last step says. */
public enum LeakStanding {
    /** Not mended, or it leaks again. */
    OPEN,
    /** Mended; nobody has looked again. */
    REPAIRED,
    /** Looked at again and tight. */
    VERIFIED,
    /** Does not count. */
    WITHDRAWN;

    /** What the last step says; null when there is none. */
    public static LeakStanding of(@Nullable LeakStep last) {
        if (last == null) {
            return OPEN;
        }
        return switch (last.kind()) {
            case REPAIRED -> REPAIRED;
            case TIGHT -> VERIFIED;
            case STILL_LEAKS -> OPEN;
            case WITHDRAWN -> WITHDRAWN;
        };
    }

    /** Whether a step can follow. */
    public boolean mayBecome(StepKind step) {
        return switch (step) {
            case REPAIRED -> this == OPEN;
            case TIGHT -> this == OPEN || this == REPAIRED;
            case STILL_LEAKS -> this == REPAIRED || this == VERIFIED;
            case WITHDRAWN -> this != WITHDRAWN;
        };
    }
}
