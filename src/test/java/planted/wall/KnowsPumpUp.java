package planted.wall;

import planted.pumpup.KnowsTrend;

/** A pure class that looks sideways in the map of modules. */
public class KnowsPumpUp {

    KnowsTrend pumpup = new KnowsTrend();
}
