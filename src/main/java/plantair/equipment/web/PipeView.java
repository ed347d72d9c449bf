package plantair.equipment.web;

import org.jspecify.annotations.Nullable;
import plantair.equipment.PipePiece;
import plantair.quantity.Entered;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Rounded;
import plantair.quantity.VesselVolume;
import plantair.site.Site;
import plantair.web.QuantityFormat;
import plantair.web.TypedText;
import plantair.web.UnitSet;

/**
 * A pipe piece in a list; a reading is null when it is not known.
 *
 * @param subject id, tag and site
 * @param length along the pipe
 * @param bore inside diameter
 * @param volume of a piece that is no pipe
 * @param note free text
 * @param inService false once it is gone
 */
record PipeView(
        Subject subject,
        @Nullable String length,
        @Nullable String bore,
        @Nullable String volume,
        String note,
        boolean inService) {

    static PipeView of(PipePiece pipe, Site site, UnitSet units) {
        var facts = pipe.facts();
        var format = QuantityFormat.of(units);
        return new PipeView(
                Subject.of(pipe.id(), facts.tag(), site),
                TypedText.of(facts.length(), units.elevation(), typed -> length(typed, units.elevation())),
                TypedText.of(facts.bore(), units.bore(), typed -> format.bore(Length.of(typed))),
                TypedText.of(facts.volume(), units.vessel(), typed -> format.vessel(VesselVolume.of(typed))),
                facts.note(),
                facts.inService());
    }

    private static String length(Entered typed, LengthUnit unit) {
        return Rounded.significant(Length.of(typed).in(unit), 3) + " " + unit.symbol();
    }
}
