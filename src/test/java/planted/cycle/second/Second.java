package planted.cycle.second;

import planted.cycle.first.First;

/** Half of a cycle of modules. */
public record Second(First first) {}
