package plantair.testrecord.web;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;

/**
 * What a reviewer looks at beside the findings.
 *
 * @param instruments those named, with the state of their certificates on the day
 * @param override why one past its date was used; null when none was
 */
record ReviewView(List<String> instruments, @Nullable String override) {

    static ReviewView of(PumpUpTest test, ResultWords words) {
        Stream<String> instruments = test.instruments().stream().map(copy -> line(copy, words));
        return new ReviewView(instruments.toList(), test.overrideReason());
    }

    private static String line(InstrumentCopy copy, ResultWords words) {
        return words.say(
                "review.instrument",
                words.say("instrument.kind." + copy.kind()),
                copy.tag(),
                copy.dueOn() == null ? "–" : copy.dueOn().toString(),
                words.say("status." + copy.status()));
    }
}
