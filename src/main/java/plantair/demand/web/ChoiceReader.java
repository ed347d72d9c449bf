package plantair.demand.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.demand.LeaksFrom;
import plantair.demand.StandbyMachine;
import plantair.demand.SupplyFacts;
import plantair.equipment.Compressor;
import plantair.register.Submission;

/** Reads how a site wants its supply reckoned. */
final class ChoiceReader {

    private final Submission sent;
    private final Typing typing;

    ChoiceReader(Submission sent) {
        this.sent = sent;
        typing = new Typing(sent);
    }

    /**
     * The facts; empty when something is wrong with what was typed.
     *
     * @param site its name
     * @param machines of the site
     */
    Optional<SupplyFacts> read(ChoiceForm form, String site, List<Compressor> machines) {
        var pressure = typing.pressure("workingPressure", form.getWorkingPressure(), true);
        List<StandbyMachine> standby = standby(form.getStandby(), machines);
        var from = sent.checks().choice("leaksFrom", form.getLeaksFrom(), LeaksFrom.class);
        boolean typed = from.isPresent() && from.get() == LeaksFrom.TYPED;
        var leaks = typing.flow("leaks", form.getLeaks(), typed);
        var leaksU = typing.share("leaksUncertainty", form.getLeaksUncertainty());
        if (from.isPresent() && !typed && !form.getLeaks().isBlank()) {
            sent.reject("leaks.number", "supply.leaks.unused");
        }
        if (from.isPresent() && !typed && !form.getLeaksUncertainty().isBlank()) {
            sent.reject("leaksUncertainty.number", "supply.leaks.unused");
        }
        var reserve = typing.percent("reserve", form.getReserve());
        var uncertainty = typing.share("uncertainty", form.getUncertainty());
        var note = sent.checks().text("note", form.getNote(), 4_000, false);
        if (pressure.isEmpty() || from.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SupplyFacts(
                site,
                pressure.get(),
                reserve.orElse(null),
                uncertainty.orElse(null),
                from.get(),
                leaks.orElse(null),
                leaksU.orElse(null),
                standby,
                note.orElse("")));
    }

    private List<StandbyMachine> standby(List<String> typed, List<Compressor> machines) {
        List<StandbyMachine> standby = new ArrayList<>();
        for (Compressor machine : machines) {
            if (typed.contains(String.valueOf(machine.id()))) {
                standby.add(new StandbyMachine(machine.id(), machine.tag()));
            }
        }
        if (standby.size() < typed.stream().distinct().count()) {
            sent.reject("standby", "supply.standby.unknown");
        }
        return standby;
    }
}
