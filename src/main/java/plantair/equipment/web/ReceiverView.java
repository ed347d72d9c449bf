package plantair.equipment.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Receiver;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.VesselVolume;
import plantair.site.Site;
import plantair.web.QuantityFormat;
import plantair.web.TypedText;
import plantair.web.UnitSet;

/**
 * A receiver as pages show it; a fact is null when it is not known.
 *
 * @param subject id, tag and site
 * @param volume gross volume
 * @param knownBy code of how that is known
 * @param mawp maximum allowable working pressure
 * @param reliefSet set pressure of the relief valve
 * @param certificateDue last day of the certificate
 * @param cutOut highest pressure at which what fills it stops
 * @param certificateRequired whether it needs a certificate
 * @param shellRequired least thickness of the shell
 * @param headRequired least thickness of the heads
 * @param note free text
 * @param inService false once it is retired
 * @param hazards what forbids to pump it up
 */
record ReceiverView(
        Subject subject,
        @Nullable String volume,
        String knownBy,
        @Nullable String mawp,
        @Nullable String reliefSet,
        @Nullable LocalDate certificateDue,
        @Nullable String cutOut,
        @Nullable Boolean certificateRequired,
        @Nullable String shellRequired,
        @Nullable String headRequired,
        String note,
        boolean inService,
        List<HazardWords.Hazard> hazards) {

    static ReceiverView of(Receiver receiver, Site site, List<HazardWords.Hazard> hazards, UnitSet units) {
        var facts = receiver.facts();
        var format = QuantityFormat.of(units);
        Function<Entered, String> gauge = typed -> format.gauge(GaugePressure.of(typed));
        return new ReceiverView(
                Subject.of(receiver.id(), facts.tag(), site),
                TypedText.of(facts.volume(), units.vessel(), typed -> format.vessel(VesselVolume.of(typed))),
                facts.volumeKnownBy().name(),
                TypedText.of(facts.mawp(), units.pressure(), gauge),
                TypedText.of(facts.reliefSet(), units.pressure(), gauge),
                facts.certificateDue(),
                TypedText.of(facts.cutOut(), units.pressure(), gauge),
                facts.certificateRequired(),
                Objects.toString(facts.shellRequired(), null),
                Objects.toString(facts.headRequired(), null),
                facts.note(),
                facts.inService(),
                hazards);
    }

    /** Whether it must not be pumped up as it stands. */
    public boolean isBarred() {
        return !hazards.isEmpty();
    }
}
