package plantair.export;

import static plantair.export.TestColumn.code;
import static plantair.export.TestColumn.reading;
import static plantair.export.TestColumn.text;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.GuideLog;
import plantair.testrecord.Laps;

/** What a test guided at the machine keeps beside its readings; empty for others. */
final class GuideColumns {

    private GuideColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(
                        Stream.of(text(
                                        "laps",
                                        "marks passed in the run, as typed: pressure @ time from the start, with their unit codes",
                                        run -> Optional.ofNullable(run.typed().laps())
                                                .map(Laps::text)
                                                .orElse(null))
                                .ofRun()),
                        reading(
                                "drained",
                                "liquid that came out of the receiver before the runs",
                                run -> of(run, GuideLog::drained),
                                Si.VOLUME),
                        Stream.of(
                                code(
                                        "after_stop",
                                        "what was heard after the machine stopped: SILENT, HISSES or NOT_HEARD",
                                        run -> of(run, GuideLog::afterStop)),
                                text(
                                        "steps",
                                        "what was ticked and timed, one a line, times by the clock of the device",
                                        run -> of(run, GuideLog::steps)),
                                code(
                                        "device_recorded_at",
                                        "when the test was finished by the clock of the device, ISO 8601, UTC",
                                        run -> of(run, GuideLog::deviceRecordedAt)),
                                code(
                                        "device_offset_ms",
                                        "server clock less device clock when it was sent, in milliseconds",
                                        run -> of(run, GuideLog::deviceOffsetMs))))
                .flatMap(columns -> columns);
    }

    private static <T> @Nullable T of(TestRun run, Function<GuideLog, @Nullable T> value) {
        return Optional.ofNullable(run.test().guide()).map(value).orElse(null);
    }
}
