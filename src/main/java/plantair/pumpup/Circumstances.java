package plantair.pumpup;

import org.jspecify.annotations.Nullable;

/**
 * What bears on how far a result can be trusted.
 *
 * @param instruments with what it was read
 * @param hold the static hold before the runs; null when none was made
 * @param machine what is known of the machine
 * @param learnedFactor the machine's own warming factor; null to use the lumped model
 */
public record Circumstances(
        Instruments instruments,
        @Nullable StaticHold hold,
        MachineData machine,
        @Nullable LearnedFactor learnedFactor) {

    /** Without a learned factor. */
    public Circumstances(Instruments instruments, @Nullable StaticHold hold, MachineData machine) {
        this(instruments, hold, machine, null);
    }

    /** Nothing known. */
    public static final Circumstances UNKNOWN = new Circumstances(Instruments.UNNAMED, null, MachineData.UNKNOWN);

    Circumstances corrected(GaugeAccuracy gauge) {
        StaticHold corrected = hold == null
                ? null
                : new StaticHold(
                        gauge.corrected(hold.start()), gauge.corrected(hold.end()), hold.waited(), hold.place());
        return new Circumstances(instruments, corrected, machine, learnedFactor);
    }
}
