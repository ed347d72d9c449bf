package plantair.history;

import plantair.register.FactLines;
import plantair.register.Facts;
import plantair.trend.Limits;

/**
 * What a plant says of its limits.
 *
 * @param name of the site
 * @param limits parts of the baseline
 */
public record LimitFacts(String name, Limits limits) implements Facts {

    @Override
    public String lines() {
        return new FactLines()
                .add("watch below", limits.watchBelow() + " % of baseline")
                .add("plan below", limits.planBelow() + " % of baseline")
                .add("act below", limits.actBelow() + " % of baseline")
                .toString();
    }
}
