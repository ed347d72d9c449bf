package plantair.testrecord;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Compressor;
import plantair.equipment.RatingEntry;

/**
 * A test whose every reading could be understood, not yet recorded.
 *
 * @param submission made by the form, so that a form sent twice is one test
 * @param compressor the machine
 * @param performedAt when the runs were made
 * @param zone id of the site's time zone
 * @param tester who made them
 * @param conditions what was read once
 * @param volumes what was pumped up
 * @param ratings copied from the compressor
 * @param runs the runs, one or more
 * @param notes free text, may be empty
 * @param confirmed codes of unlikely readings that the tester confirmed, may be empty
 * @param methodVersion the method that makes its result
 * @param checks what was checked around the runs
 * @param instruments the instruments named
 * @param overrideReason why an instrument past its date was used; null when none was
 * @param guide what a guided test keeps beside; null for any other
 */
public record TestDraft(
        UUID submission,
        Compressor compressor,
        Instant performedAt,
        String zone,
        String tester,
        TestConditions conditions,
        List<VolumeCopy> volumes,
        List<RatingEntry> ratings,
        List<RunEntry> runs,
        String notes,
        String confirmed,
        String methodVersion,
        TestChecks checks,
        List<InstrumentCopy> instruments,
        @Nullable String overrideReason,
        @Nullable GuideLog guide) {

    /** A draft of a test that was not guided. */
    public TestDraft(
            UUID submission,
            Compressor compressor,
            Instant performedAt,
            String zone,
            String tester,
            TestConditions conditions,
            List<VolumeCopy> volumes,
            List<RatingEntry> ratings,
            List<RunEntry> runs,
            String notes,
            String confirmed,
            String methodVersion,
            TestChecks checks,
            List<InstrumentCopy> instruments,
            @Nullable String overrideReason) {
        this(
                submission,
                compressor,
                performedAt,
                zone,
                tester,
                conditions,
                volumes,
                ratings,
                runs,
                notes,
                confirmed,
                methodVersion,
                checks,
                instruments,
                overrideReason,
                null);
    }

    /** A draft without checks and named instruments. */
    public TestDraft(
            UUID submission,
            Compressor compressor,
            Instant performedAt,
            String zone,
            String tester,
            TestConditions conditions,
            List<VolumeCopy> volumes,
            List<RatingEntry> ratings,
            List<RunEntry> runs,
            String notes,
            String confirmed,
            String methodVersion) {
        this(
                submission,
                compressor,
                performedAt,
                zone,
                tester,
                conditions,
                volumes,
                ratings,
                runs,
                notes,
                confirmed,
                methodVersion,
                TestChecks.NONE,
                List.of(),
                null);
    }

    public TestDraft {
        volumes = List.copyOf(volumes);
        ratings = List.copyOf(ratings);
        runs = List.copyOf(runs);
        instruments = List.copyOf(instruments);
    }

    /** The same with the codes of what the tester confirmed. */
    public TestDraft withConfirmed(String codes) {
        return with(codes, guide);
    }

    /** The same with what a guided test keeps beside. */
    public TestDraft with(GuideLog log) {
        return with(confirmed, log);
    }

    private TestDraft with(String codes, @Nullable GuideLog log) {
        return new TestDraft(
                submission,
                compressor,
                performedAt,
                zone,
                tester,
                conditions,
                volumes,
                ratings,
                runs,
                notes,
                codes,
                methodVersion,
                checks,
                instruments,
                overrideReason,
                log);
    }
}
