package plantair.demand.web;

import java.util.Optional;
import plantair.demand.DemandFacts;
import plantair.demand.DemandKind;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.register.Submission;
import plantair.web.EnteredField;

/** Reads the form of something that takes air. */
final class DemandReader {

    static final int MOST_PIECES = 1_000;

    private final Submission sent;
    private final Typing typing;
    private final AirReader airReader;

    DemandReader(Submission sent, AbsolutePressure station) {
        this.sent = sent;
        typing = new Typing(sent);
        airReader = new AirReader(typing, station);
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<DemandFacts> read(DemandForm form) {
        var label = sent.checks().text("label", form.getLabel(), 80, true);
        var kind = sent.checks().choice("kind", form.getKind(), DemandKind.class);
        var pieces = sent.checks().whole("pieces", form.getPieces(), 1, MOST_PIECES, true);
        Optional<Air> air = kind.flatMap(known -> airReader.read(known, form.getAir()));
        Optional<Times> times = kind.flatMap(known -> times(known, form));
        var least = typing.pressure("leastPressure", form.getLeastPressure(), false);
        var reserve = typing.percent("reserve", form.getReserve());
        var uncertainty = typing.share("uncertainty", form.getUncertainty());
        var note = sent.checks().text("note", form.getNote(), 4_000, false);
        if (label.isEmpty() || pieces.isEmpty() || air.isEmpty() || times.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DemandFacts(
                label.get(),
                kind.get(),
                pieces.get(),
                air.get().flow(),
                air.get().basis(),
                air.get().stated(),
                air.get().nozzle(),
                air.get().bore(),
                air.get().edge(),
                air.get().pressure(),
                least.orElse(null),
                times.get().use().orElse(null),
                reserve.orElse(null),
                uncertainty.orElse(null),
                times.get().length().orElse(null),
                times.get().every().orElse(null),
                note.orElse(""),
                Boolean.parseBoolean(form.getInService())));
    }

    private record Times(Optional<Entered> use, Optional<Entered> length, Optional<Entered> every) {}

    private Optional<Times> times(DemandKind kind, DemandForm form) {
        if (kind != DemandKind.EVENT) {
            blank("eventLength", form.getEventLength());
            blank("eventEvery", form.getEventEvery());
            return Optional.of(
                    new Times(typing.share("useFactor", form.getUseFactor()), Optional.empty(), Optional.empty()));
        }
        blank("useFactor", form.getUseFactor());
        var length = duration("eventLength", form.getEventLength());
        var every = duration("eventEvery", form.getEventEvery());
        if (length.isEmpty() || every.isEmpty()) {
            return Optional.empty();
        }
        if (Elapsed.of(length.get()).seconds() > Elapsed.of(every.get()).seconds()) {
            sent.reject("eventEvery.number", "demand.event.order", length.get().toString());
            return Optional.empty();
        }
        return Optional.of(new Times(Optional.empty(), length, every));
    }

    private Optional<Entered> duration(String path, EnteredField field) {
        return sent.checks().positive(path, sent.checks().required(path, field, DurationUnit.class));
    }

    private void blank(String path, EnteredField field) {
        if (!field.isBlank()) {
            sent.reject(path + ".number", "demand.ofAnotherKind");
        }
    }
}
