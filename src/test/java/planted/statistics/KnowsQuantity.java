package planted.statistics;

import planted.quantity.KnowsText;

/** A pure class that looks up the map of modules. */
public class KnowsQuantity {

    KnowsText text = new KnowsText();
}
