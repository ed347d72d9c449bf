package plantair.export;

import static plantair.export.TestColumn.code;
import static plantair.export.TestColumn.text;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.TestReview;

/** Which test and run, who, when, and what was said about it. */
final class IdentityColumns {

    private IdentityColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(
                code("test_id", "number of the test", run -> run.test().id()),
                code("run", "number of the run in its test, from 1", TestRun::number)
                        .ofRun(),
                text(
                        "site",
                        "name of the site, as the register has it now",
                        run -> run.test().compressor().site().name()),
                text(
                        "compressor",
                        "tag of the machine, as the register has it now",
                        run -> run.test().compressor().tag()),
                code(
                        "compressor_id",
                        "number of the machine; stays when its tag changes",
                        run -> run.test().compressor().id()),
                code(
                        "performed_at",
                        "when the test was made, ISO 8601 with the offset of its zone",
                        run -> at(run, run.test().performedAt())),
                code("zone", "id of that time zone", run -> run.test().zone()),
                text("tester", "who made the runs", run -> run.test().tester()),
                code(
                        "recorded_at",
                        "when it was recorded, ISO 8601 with the offset of the same zone",
                        run -> at(run, run.test().recordedAt())),
                text("recorded_by", "who recorded it", run -> run.test().recordedBy()),
                code(
                        "supersedes",
                        "number of the test that this one corrects",
                        run -> run.test().supersedesId()),
                text("reason", "why it corrects that test", run -> run.test().reason()),
                code(
                        "superseded_by",
                        "number of the test that corrects this one; empty while it is current",
                        run -> run.supersededBy()),
                text(
                        "reviewed_by",
                        "the second person who reviewed it; empty when nobody did",
                        run -> review(run, TestReview::reviewedBy)),
                code(
                        "reviewed_at",
                        "when that was, ISO 8601 with the offset of the same zone",
                        run -> review(run, review -> at(run, review.reviewedAt()))),
                code(
                        "method_version",
                        "method of the result, see docs/method.md",
                        run -> run.test().methodVersion()),
                code(
                        "confirmed",
                        "codes of the unlikely readings that the tester confirmed",
                        run -> run.test().confirmed()),
                text("notes", "notes of the tester", run -> run.test().notes()),
                code(
                        "submission",
                        "made when the test was sent in; the same test is never taken in twice",
                        run -> run.test().submission()));
    }

    private static @Nullable String review(TestRun run, Function<TestReview, String> value) {
        return Optional.ofNullable(run.review()).map(value).orElse(null);
    }

    private static String at(TestRun run, Instant instant) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                instant.atZone(run.test().zone()));
    }
}
