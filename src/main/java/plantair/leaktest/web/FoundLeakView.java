package plantair.leaktest.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.leaktest.FoundLeak;
import plantair.leaktest.FoundLeakDraft;
import plantair.leaktest.LeakStanding;
import plantair.leaktest.LeakStep;
import plantair.supply.LeakEstimate;
import plantair.web.Status;

/**
 * A found leak as pages show it.
 *
 * @param id its id
 * @param leak as typed
 * @param standing how it stands
 * @param state the same as a word and a shape
 * @param size what it is thought to lose; empty when nobody estimated it
 * @param since day of its last step; null when there is none
 * @param recorded who recorded it and when
 */
record FoundLeakView(
        long id,
        FoundLeakDraft leak,
        LeakStanding standing,
        Status state,
        String size,
        @Nullable LocalDate since,
        String recorded) {

    static FoundLeakView of(FoundLeak leak, @Nullable LeakStep last, LeakWords words) {
        LeakStanding standing = LeakStanding.of(last);
        return new FoundLeakView(
                leak.id(),
                leak.draft(),
                standing,
                new Status(kind(standing), words.say("foundLeak.standing." + standing)),
                leak.draft()
                        .size()
                        .estimate(leak.tag())
                        .map(LeakEstimate::measured)
                        .map(flow -> LeakWords.flow(words.format(), flow))
                        .orElse(""),
                last == null ? null : last.doneOn(),
                recorded(leak.recordedBy(), LeakTestViews.when(leak.recordedAt(), leak.zoneId()), words));
    }

    private static String recorded(String by, String at, LeakWords words) {
        return words.say("leakTest.recorded", at, by);
    }

    private static Status.Kind kind(LeakStanding standing) {
        return switch (standing) {
            case OPEN -> Status.Kind.ALARM;
            case REPAIRED -> Status.Kind.WATCH;
            case VERIFIED -> Status.Kind.GOOD;
            case WITHDRAWN -> Status.Kind.NONE;
        };
    }

    /**
     * A step as its page shows it.
     *
     * @param kind code of what became of the leak
     * @param doneOn day of it
     * @param doneBy who
     * @param note free text, may be empty
     * @param recorded who recorded it and when
     */
    record Step(String kind, LocalDate doneOn, String doneBy, String note, String recorded) {}

    static List<Step> steps(List<LeakStep> steps, ZoneId zone, LeakWords words) {
        return steps.stream()
                .map(step -> new Step(
                        step.kind().name(),
                        step.doneOn(),
                        step.doneBy(),
                        step.note(),
                        recorded(step.recordedBy(), LeakTestViews.when(step.recordedAt(), zone), words)))
                .toList();
    }
}
