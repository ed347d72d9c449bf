package plantair.testrecord.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.modulith.NamedInterface;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.Errors;
import plantair.equipment.Compressor;
import plantair.equipment.PipePiece;
import plantair.equipment.PipePieces;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.equipment.VesselStop;
import plantair.equipment.VesselStops;
import plantair.testrecord.VolumeCopy;
import plantair.web.Choice;
import plantair.web.Warnings;

/** The receivers and pipe pieces of a site, as choices of a test form and as copies for a test. */
@Component
@NamedInterface("form")
public class VolumeChoices {

    private final Receivers receivers;
    private final PipePieces pipes;
    private final VesselStops stops;

    VolumeChoices(Receivers receivers, PipePieces pipes, VesselStops stops) {
        this.receivers = receivers;
        this.pipes = pipes;
        this.stops = stops;
    }

    /** Receivers of a site that are in service. */
    public List<Choice> receivers(long siteId) {
        return receivers.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(siteId).stream()
                .map(receiver -> new Choice(
                        String.valueOf(receiver.id()),
                        receiver.facts().tag() + ", " + receiver.facts().volume()))
                .toList();
    }

    /** Pipe pieces of a site that are in service. */
    public List<Choice> pipes(long siteId) {
        return pipes.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(siteId).stream()
                .map(pipe -> new Choice(String.valueOf(pipe.id()), pipe.facts().tag() + ", " + size(pipe)))
                .toList();
    }

    private static String size(PipePiece pipe) {
        var facts = pipe.facts();
        return facts.volume() == null
                ? facts.length() + " of " + facts.bore() + " bore"
                : facts.volume().toString();
    }

    /** Copies of what was chosen, a receiver at least; what is not of this site is rejected. */
    List<VolumeCopy> read(TestForm form, Compressor compressor, Errors errors) {
        if (form.getReceivers().isEmpty()) {
            errors.rejectValue("receivers", "test.noReceiver");
        }
        return copies(form.getReceivers(), form.getPipes(), compressor.site().id(), errors);
    }

    /**
     * Copies of what was chosen; what is not of this site is rejected beside the fields {@code receivers} and {@code pipes}.
     *
     * @param chosenReceivers ids as sent
     * @param chosenPipes ids as sent
     */
    @Transactional(readOnly = true)
    public List<VolumeCopy> copies(List<String> chosenReceivers, List<String> chosenPipes, long siteId, Errors errors) {
        List<VolumeCopy> copies = new ArrayList<>();
        for (String chosen : chosenReceivers) {
            id(chosen)
                    .flatMap(receivers::findById)
                    .filter(receiver -> receiver.site().id() == siteId)
                    .map(VolumeCopy::of)
                    .ifPresentOrElse(copies::add, () -> errors.rejectValue("receivers", "test.receiverElsewhere"));
        }
        for (String chosen : chosenPipes) {
            id(chosen)
                    .flatMap(pipes::findById)
                    .filter(pipe -> pipe.site().id() == siteId)
                    .map(VolumeCopy::of)
                    .ifPresentOrElse(copies::add, () -> errors.rejectValue("pipes", "test.pipeElsewhere"));
        }
        return copies;
    }

    /** Hazards of the chosen receivers, to be confirmed. */
    void warn(TestForm form, LocalDate day, Warnings warnings) {
        for (String chosen : form.getReceivers()) {
            id(chosen).flatMap(receivers::findById).ifPresent(receiver -> warn(receiver, day, warnings));
        }
    }

    private void warn(Receiver receiver, LocalDate day, Warnings warnings) {
        String tag = receiver.facts().tag();
        for (VesselStop stop : stops.of(receiver, day)) {
            warnings.add("receivers", "test.hazard." + stop.hazard().name(), tag, stop.reason(), stop.act());
        }
    }

    private static Optional<Long> id(String typed) {
        return typed.matches("\\d{1,18}") ? Optional.of(Long.valueOf(typed)) : Optional.empty();
    }
}
