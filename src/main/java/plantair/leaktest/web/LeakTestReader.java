package plantair.leaktest.web;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.leaktest.CycleEntry;
import plantair.leaktest.LeakPlace;
import plantair.leaktest.LeakState;
import plantair.leaktest.LeakTestDraft;
import plantair.leaktest.LeakTestKind;
import plantair.leaktest.MachineCopy;
import plantair.quantity.Entered;
import plantair.register.Submission;
import plantair.site.Site;

/** Reads the form of a leak test: either every reading is understood and possible, or what is not has a message beside it. */
@Component
class LeakTestReader {

    private final Compressors compressors;
    private final MachineReader machines;
    private final FallReader falls;
    private final Clock clock;

    LeakTestReader(Compressors compressors, MachineReader machines, FallReader falls, Clock clock) {
        this.compressors = compressors;
        this.machines = machines;
        this.falls = falls;
        this.clock = clock;
    }

    /**
     * The test; empty when something was rejected.
     *
     * @param old the test that this one corrects; null for a new one
     */
    Optional<LeakTestDraft> read(LeakTestForm form, Site site, @Nullable LeakTestDraft old, Submission sent) {
        var typing = new LeakTyping(sent);
        var checks = sent.checks();
        Optional<LeakTestKind> kind = checks.choice("kind", form.getKind(), LeakTestKind.class);
        Optional<UUID> mark = typing.submission(form.getSubmission());
        Optional<Instant> at =
                typing.moment(form.getDate(), form.getTime(), site.facts().zoneId(), clock.instant());
        Optional<String> tester = checks.text("tester", form.getTester(), 120, true);
        Optional<String> note = checks.text("note", form.getNote(), 4_000, false);
        Optional<LeakPlace> place = place(form, kind, sent);
        Optional<Compressor> machine = place.filter(LeakPlace::isOfMachine).flatMap(of -> machine(form, site, sent));
        boolean loads = kind.filter(LeakTestKind.LOAD_TIMES::equals).isPresent();
        Optional<LeakState> state = state(form, site, !loads, typing);
        if (kind.isEmpty() || state.isEmpty()) {
            return Optional.empty();
        }
        List<MachineCopy> ran = loads ? machines.read(form, site, state.get(), old, typing) : List.of();
        List<CycleEntry> cycles = loads ? new CycleReader(typing).read(form) : List.of();
        FallReader.Fall fall = falls.read(form, site.id(), state.get(), kind.get(), typing);
        if (sent.errors().hasErrors()) {
            return Optional.empty();
        }
        if (!state.get().usersOff() && !place.orElseThrow().isOfMachine()) {
            sent.warnings().add("usersOff", "leakTest.usersOn");
        }
        return Optional.of(new LeakTestDraft(
                mark.orElseThrow(),
                site.id(),
                machine.map(Compressor::id).orElse(null),
                kind.get(),
                place.orElseThrow(),
                at.orElseThrow(),
                site.facts().zone(),
                tester.orElseThrow(),
                state.get(),
                cycles,
                ran,
                fall.readings(),
                fall.volumes(),
                note.orElse(""),
                form.getConfirmed()));
    }

    private static Optional<LeakPlace> place(LeakTestForm form, Optional<LeakTestKind> kind, Submission sent) {
        Optional<LeakPlace> place = sent.checks().choice("place", form.getPlace(), LeakPlace.class);
        boolean loads = kind.filter(LeakTestKind.LOAD_TIMES::equals).isPresent();
        if (loads && place.filter(LeakPlace::isOfMachine).isPresent()) {
            sent.reject("place", "leakTest.place.notOfMachine");
        }
        return place;
    }

    private Optional<Compressor> machine(LeakTestForm form, Site site, Submission sent) {
        Optional<Compressor> machine = sent.checks()
                .id("compressor", form.getCompressor(), true)
                .flatMap(compressors::findWithSiteById)
                .filter(found -> found.site().id() == site.id());
        if (machine.isEmpty()
                && !form.getCompressor().isBlank()
                && !sent.errors().hasFieldErrors("compressor")) {
            sent.reject("compressor", "leakTest.compressor.elsewhere");
        }
        return machine;
    }

    private static Optional<LeakState> state(LeakTestForm form, Site site, boolean fall, LeakTyping typing) {
        Optional<Entered> pressure = typing.gauge("atPressure", form.getAtPressure(), true);
        Optional<Entered> barometer = typing.barometer("barometer", form.getBarometer());
        return pressure.map(at -> new LeakState(
                Boolean.parseBoolean(form.getUsersOff()),
                Boolean.parseBoolean(form.getDrainsOff()),
                at,
                site.facts().elevation(),
                site.facts().barometer(),
                barometer.orElse(null),
                fall ? FallReader.volume(form, typing).orElse(null) : null,
                fall ? FallReader.volumePercent(form, typing).orElse(null) : null,
                fall ? FallReader.division(form, typing).orElse(null) : null,
                fall && Boolean.parseBoolean(form.getLeaveEarly())));
    }
}
