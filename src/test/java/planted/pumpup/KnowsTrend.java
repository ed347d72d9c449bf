package planted.pumpup;

import planted.trend.KnowsHipparchus;

/** A pure class that looks sideways in the map of modules. */
public class KnowsTrend {

    KnowsHipparchus trend = new KnowsHipparchus();
}
