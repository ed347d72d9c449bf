package plantair.planner.web;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.equipment.PipeFacts;
import plantair.equipment.PipePiece;
import plantair.equipment.PipePieces;
import plantair.equipment.Receiver;
import plantair.equipment.ReceiverFacts;
import plantair.equipment.Receivers;
import plantair.pumpup.VolumePart;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.VesselVolume;
import plantair.web.Choice;

/** The receivers and pipe pieces of a site: as choices, and those chosen as one volume. */
@Component
final class PlanVolumes {

    private final Receivers receivers;
    private final PipePieces pipes;

    PlanVolumes(Receivers receivers, PipePieces pipes) {
        this.receivers = receivers;
        this.pipes = pipes;
    }

    List<Choice> receivers(long siteId) {
        return receivers.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(siteId).stream()
                .map(receiver -> new Choice(
                        String.valueOf(receiver.id()),
                        receiver.facts().tag() + ", " + receiver.facts().volume()))
                .toList();
    }

    List<Choice> pipes(long siteId) {
        return pipes.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(siteId).stream()
                .map(pipe -> new Choice(String.valueOf(pipe.id()), pipe.facts().tag()))
                .toList();
    }

    /** The volume of all that was chosen; what is not of this site is rejected, and so is a stop above a MAWP. */
    Optional<VesselVolume> read(PlanForm form, long siteId, Optional<Entered> stop, Errors errors) {
        List<Receiver> vessels = receivers.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(siteId).stream()
                .filter(receiver -> form.getReceivers().contains(String.valueOf(receiver.id())))
                .toList();
        List<PipePiece> pieces = pipes.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(siteId).stream()
                .filter(pipe -> form.getPipes().contains(String.valueOf(pipe.id())))
                .toList();
        if (vessels.isEmpty()) {
            errors.rejectValue("receivers", "plan.noReceiver");
        } else if (vessels.size() < form.getReceivers().size()) {
            errors.rejectValue("receivers", "plan.elsewhere");
        }
        if (pieces.size() < form.getPipes().size()) {
            errors.rejectValue("pipes", "plan.elsewhere");
        }
        stop.ifPresent(pressure -> vessels.forEach(vessel -> allowed(pressure, vessel.facts(), errors)));
        return Stream.concat(
                        vessels.stream()
                                .map(vessel -> VesselVolume.of(vessel.facts().volume())),
                        pieces.stream().map(piece -> volume(piece.facts())))
                .reduce(VesselVolume::plus);
    }

    private static void allowed(Entered stop, ReceiverFacts receiver, Errors errors) {
        Entered most = receiver.mawp();
        if (most != null
                && GaugePressure.of(stop).pascals() > GaugePressure.of(most).pascals()) {
            Object[] args = {stop.toString(), receiver.tag(), most.toString()};
            errors.rejectValue("stop.number", "plan.aboveMawp", args, null);
        }
    }

    private static VesselVolume volume(PipeFacts pipe) {
        return pipe.volume() != null
                ? VesselVolume.of(pipe.volume())
                : VolumePart.ofPipe(
                        Length.of(Objects.requireNonNull(pipe.length())),
                        Length.of(Objects.requireNonNull(pipe.bore())));
    }
}
