package plantair.testing;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressors;
import plantair.leaktest.CycleEntry;
import plantair.leaktest.LeakPlace;
import plantair.leaktest.LeakState;
import plantair.leaktest.LeakTest;
import plantair.leaktest.LeakTestDraft;
import plantair.leaktest.LeakTestKind;
import plantair.leaktest.MachineCopy;
import plantair.leaktest.RecordLeakTest;
import plantair.quantity.Entered;

/** Leak tests by load times, for tests of what is reckoned with them: five like cycles, the capacity of machine 1 typed. */
public final class NightsOfLeaks {

    private final RecordLeakTest recordLeakTest;
    private final Compressors compressors;

    private NightsOfLeaks(ApplicationContext context) {
        recordLeakTest = context.getBean(RecordLeakTest.class);
        compressors = context.getBean(Compressors.class);
    }

    public static NightsOfLeaks in(ApplicationContext context) {
        return new NightsOfLeaks(context);
    }

    /** A night at 100 psi. */
    public LeakTest record(String day, String loaded, String unloaded, String capacity) {
        var cycle = new CycleEntry(Entered.parse(loaded), Entered.parse(unloaded), null);
        var at = Entered.parse("100 [psi]");
        var machine = compressors.findWithSiteById(1).orElseThrow();
        var site = machine.site();
        var draft = new LeakTestDraft(
                UUID.randomUUID(),
                site.id(),
                null,
                LeakTestKind.LOAD_TIMES,
                LeakPlace.WHOLE_SYSTEM,
                Instant.parse(day + "T23:00:00Z"),
                "UTC",
                "Ann",
                new LeakState(true, true, at, Entered.parse("600 [ft_i]"), null, null, null, null, null, false),
                Collections.nCopies(5, cycle),
                List.of(MachineCopy.of(machine, Entered.parse(capacity), at, Entered.parse("2 %"))),
                List.of(),
                List.of(),
                "",
                "");
        return recordLeakTest.record(draft, null, "Ann");
    }
}
