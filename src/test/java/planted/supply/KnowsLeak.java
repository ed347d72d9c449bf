package planted.supply;

import planted.leak.KnowsSupply;

/** A pure class that looks sideways in the map of modules. */
public class KnowsLeak {

    KnowsSupply leak;

    public KnowsLeak(KnowsSupply leak) {
        this.leak = leak;
    }
}
