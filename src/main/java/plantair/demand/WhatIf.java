package plantair.demand;

import java.util.List;
import java.util.Set;

/**
 * What a person supposes of a site, without storing it.
 *
 * @param more what would take air too
 * @param machinesOut ids of machines that would not run
 */
public record WhatIf(List<DemandFacts> more, Set<Long> machinesOut) {

    /** Everything as it is. */
    public static final WhatIf NOTHING = new WhatIf(List.of(), Set.of());

    /** Keeps copies. */
    public WhatIf {
        more = List.copyOf(more);
        machinesOut = Set.copyOf(machinesOut);
    }
}
