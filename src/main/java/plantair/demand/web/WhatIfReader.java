package plantair.demand.web;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plantair.demand.DemandFacts;
import plantair.demand.DemandKind;
import plantair.demand.WhatIf;
import plantair.quantity.AbsolutePressure;
import plantair.register.Submission;

/** Reads what a person supposes. */
final class WhatIfReader {

    private final Submission sent;
    private final Typing typing;
    private final AirReader airReader;

    WhatIfReader(Submission sent, AbsolutePressure station) {
        this.sent = sent;
        typing = new Typing(sent);
        airReader = new AirReader(typing, station);
    }

    /**
     * What is supposed; nothing where something is wrong with it.
     *
     * @param machines ids of machines that may be taken out
     * @param label of the item that is supposed
     */
    WhatIf read(WhatIfForm form, Set<Long> machines, String label) {
        Set<Long> out = out(form.getOut(), machines);
        Optional<DemandFacts> more = form.getKind().isBlank() ? Optional.empty() : item(form, label);
        return sent.errors().hasErrors()
                ? WhatIf.NOTHING
                : new WhatIf(more.stream().toList(), out);
    }

    private Set<Long> out(List<String> typed, Set<Long> machines) {
        Set<Long> out = new HashSet<>();
        for (String one : typed) {
            sent.checks().id("out", one, true).ifPresent(id -> {
                if (machines.contains(id)) {
                    out.add(id);
                } else {
                    sent.reject("out", "choice.unknown", one);
                }
            });
        }
        return out;
    }

    private Optional<DemandFacts> item(WhatIfForm form, String label) {
        var kind = sent.checks().choice("kind", form.getKind(), DemandKind.class);
        if (kind.isPresent() && kind.get() == DemandKind.EVENT) {
            sent.reject("kind", "supply.whatIf.event");
            return Optional.empty();
        }
        var pieces = sent.checks().whole("pieces", form.getPieces(), 1, DemandReader.MOST_PIECES, true);
        var air = kind.flatMap(known -> airReader.read(known, form.getAir()));
        var use = typing.share("useFactor", form.getUseFactor());
        var reserve = typing.percent("reserve", form.getReserve());
        if (pieces.isEmpty() || air.isEmpty()) {
            return Optional.empty();
        }
        Air of = air.get();
        return Optional.of(new DemandFacts(
                label,
                kind.get(),
                pieces.get(),
                of.flow(),
                of.basis(),
                of.stated(),
                of.nozzle(),
                of.bore(),
                of.edge(),
                of.pressure(),
                null,
                use.orElse(null),
                reserve.orElse(null),
                null,
                null,
                null,
                "",
                true));
    }
}
