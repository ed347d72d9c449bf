package plantair.equipment.web;

import org.jspecify.annotations.Nullable;
import plantair.equipment.Compressor;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Length;
import plantair.site.Site;
import plantair.web.QuantityFormat;
import plantair.web.TypedText;
import plantair.web.UnitSet;

/**
 * The facts of a site; a reading is null when it is not known.
 *
 * @param id its id
 * @param name how people call it
 * @param zone its time zone
 * @param elevation as typed and in the person's unit
 * @param barometer as typed and in the person's unit
 * @param tariff as typed, with its currency
 * @param note free text
 */
record SitePage(
        long id,
        String name,
        String zone,
        @Nullable String elevation,
        @Nullable String barometer,
        @Nullable String tariff,
        String note) {

    static SitePage of(Site site, UnitSet units) {
        var facts = site.facts();
        var format = QuantityFormat.of(units);
        return new SitePage(
                site.id(),
                site.name(),
                facts.zone(),
                TypedText.of(facts.elevation(), units.elevation(), typed -> format.elevation(Length.of(typed))),
                TypedText.of(facts.barometer(), units.pressure(), typed -> format.absolute(AbsolutePressure.of(typed))),
                facts.tariff() == null ? null : facts.tariff().number() + " " + facts.currency(),
                facts.note());
    }

    /**
     * A compressor of the site.
     *
     * @param id its id
     * @param tag how the plant calls it
     * @param kind code of how it compresses
     * @param makerModel as on the plate, may be empty
     * @param inService false once it is retired
     */
    record Machine(long id, String tag, String kind, String makerModel, boolean inService) {

        static Machine of(Compressor compressor) {
            var plate = compressor.plate();
            return new Machine(
                    compressor.id(), plate.tag(), plate.kind().name(), plate.makerModel(), plate.inService());
        }
    }
}
