package plantair.leaktest.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.leaktest.CycleEntry;
import plantair.leaktest.FallReading;
import plantair.quantity.Entered;

/**
 * Reads the cycles of a compressor that feeds nothing but leaks.
 *
 * @param typing of the form
 */
record CycleReader(LeakTyping typing) {

    /** The cycles; blank rows are skipped, but one there must be. */
    List<CycleEntry> read(LeakTestForm form) {
        List<CycleEntry> cycles = new ArrayList<>();
        boolean none = form.getCycles().stream().allMatch(CycleRow::isBlank);
        if (form.getCycles().isEmpty()) {
            typing.sent().errors().reject("leakTest.cycles.none");
        }
        for (int i = 0; i < form.getCycles().size(); i++) {
            CycleRow row = form.getCycles().get(i);
            if (!row.isBlank() || (none && i == 0)) {
                cycle("cycles[" + i + "]", row).ifPresent(cycles::add);
            }
        }
        return cycles;
    }

    private Optional<CycleEntry> cycle(String path, CycleRow row) {
        Optional<Entered> loaded = typing.time(path + ".loaded", row.getLoaded(), true);
        Optional<Entered> unloaded = typing.timeOrZero(path + ".unloaded", row.getUnloaded(), false);
        Optional<Entered> standing = typing.timeOrZero(path + ".standing", row.getStanding(), false);
        boolean idle = FallReading.isSome(unloaded) || FallReading.isSome(standing);
        if (!idle && row.getUnloaded().isBlank() && row.getStanding().isBlank()) {
            typing.sent().reject(path + ".unloaded.number", "leakTest.cycle.idle");
        } else if (!idle && !typing.sent().errors().hasErrors()) {
            typing.sent().reject(path + ".unloaded.number", "leakTest.cycle.never");
        }
        return loaded.filter(time -> idle)
                .map(time -> new CycleEntry(time, unloaded.orElse(null), standing.orElse(null)));
    }
}
