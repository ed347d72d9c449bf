package plantair.site.web;

import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Length;
import plantair.site.Site;
import plantair.site.SiteFacts;
import plantair.web.QuantityFormat;
import plantair.web.TypedText;
import plantair.web.UnitSet;

/**
 * A site in a list.
 *
 * @param id its id
 * @param name how people call it
 * @param zone its time zone
 * @param elevation as typed and in the person's unit; null when not given
 * @param barometer as typed and in the person's unit; null when not given
 */
record SiteView(
        long id,
        String name,
        String zone,
        @Nullable String elevation,
        @Nullable String barometer) {

    static SiteView of(Site site, UnitSet units) {
        SiteFacts facts = site.facts();
        var format = QuantityFormat.of(units);
        return new SiteView(
                site.id(),
                site.name(),
                facts.zone(),
                TypedText.of(facts.elevation(), units.elevation(), typed -> format.elevation(Length.of(typed))),
                TypedText.of(
                        facts.barometer(), units.pressure(), typed -> format.absolute(AbsolutePressure.of(typed))));
    }
}
