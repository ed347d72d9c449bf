package planted.leak;

import planted.supply.KnowsLeak;

/** A pure class that looks sideways in the map of modules. */
public class KnowsSupply {

    KnowsLeak supply;

    public KnowsSupply(KnowsLeak supply) {
        this.supply = supply;
    }
}
