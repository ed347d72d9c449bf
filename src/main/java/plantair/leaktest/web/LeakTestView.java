package plantair.leaktest.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.leaktest.CycleEntry;
import plantair.leaktest.FallReading;
import plantair.testrecord.VolumeCopy;
import plantair.web.Status;

/**
 * A leak test as its page shows it.
 *
 * @param id its id
 * @param siteId the site
 * @param site its name
 * @param when time of it at the site
 * @param kind code of how it was measured
 * @param place code of what was shut
 * @param compressorId the machine of the test volume; null for a test of the system
 * @param tag its tag; null for a test of the system
 * @param tester who made it
 * @param usersOff whether nobody used air
 * @param drainsOff whether drains and purge were shut
 * @param note free text, may be empty
 * @param share of load times; empty else
 * @param leak the flow; empty when none is told
 * @param at its pressure
 * @param level how much it is; null when not known
 * @param byGuide by the guide with its factor; empty where that does not apply
 * @param mean mean loss between two readings; empty else
 * @param findings what is odd
 * @param steps the working
 * @param readings as typed
 * @param record who recorded it
 * @param canHold whether a pump-up test of the machine may take it as its hold
 */
record LeakTestView(
        long id,
        long siteId,
        String site,
        String when,
        String kind,
        String place,
        @Nullable Long compressorId,
        @Nullable String tag,
        String tester,
        boolean usersOff,
        boolean drainsOff,
        String note,
        String share,
        String leak,
        String at,
        @Nullable Status level,
        String byGuide,
        String mean,
        List<LeakWords.Finding> findings,
        List<LeakWorking.Step> steps,
        Readings readings,
        Record record,
        boolean canHold) {

    /**
     * What was read.
     *
     * @param cycles of load times
     * @param machines that ran
     * @param fall of a falling pressure
     * @param volumes that were shut
     * @param volume typed in their place; null else
     * @param barometer read; null when not read
     * @param division of the gauge; null for load times
     * @param leftEarly whether the first five minutes were left out
     */
    record Readings(
            List<CycleEntry> cycles,
            List<Machine> machines,
            List<FallReading> fall,
            List<VolumeCopy> volumes,
            @Nullable String volume,
            @Nullable String barometer,
            @Nullable String division,
            boolean leftEarly) {}

    /**
     * A machine that ran.
     *
     * @param id its id
     * @param tag its tag
     * @param capacity in words, with where it is from
     * @param testId its test; null when the capacity was typed
     */
    record Machine(
            long id, String tag, String capacity, @Nullable Long testId) {}

    /**
     * Who recorded it, and what stands in whose place.
     *
     * @param by who
     * @param at when, at the site
     * @param withdrawn whether it says that the other does not count
     * @param supersedesId the test it corrects; null when it is the first
     * @param reason why; null when it is the first
     * @param supersededById the test in its place; null when it stands
     * @param supersededReason why; null when it stands
     */
    record Record(
            String by,
            String at,
            boolean withdrawn,
            @Nullable Long supersedesId,
            @Nullable String reason,
            @Nullable Long supersededById,
            @Nullable String supersededReason) {}
}
