package plantair.export;

import org.jspecify.annotations.Nullable;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.RunResult;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.RunEntry;
import plantair.testrecord.StoredResult;
import plantair.testrecord.TestReview;

/**
 * A run with its test: one row of the file.
 *
 * @param test the test as recorded
 * @param stored its key figures
 * @param result what it says, as stored
 * @param certificate the certificate that restates it; null when it is as recorded
 * @param supersededBy the test that took its place; null while it is current
 * @param review the review of a second person; null when there is none
 * @param number the number of the run, from 1; 0 where no run is asked for
 */
record TestRun(
        PumpUpTest test,
        StoredResult stored,
        PumpUpResult result,
        @Nullable String certificate,
        @Nullable Long supersededBy,
        @Nullable TestReview review,
        int number) {

    /** The test alone: whoever asks it for a run is refused. */
    TestRun ofNoRun() {
        return new TestRun(test, stored, result, certificate, supersededBy, review, 0);
    }

    RunEntry typed() {
        return test.runs().get(number - 1);
    }

    RunResult says() {
        return result.runs().get(number - 1);
    }
}
