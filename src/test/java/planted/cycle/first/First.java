package planted.cycle.first;

import planted.cycle.second.Second;

/** Half of a cycle of modules. */
public class First {

    Second second = new Second(null);
}
