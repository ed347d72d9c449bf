package plantair.export;

import static plantair.export.TestColumn.code;
import static plantair.export.TestColumn.text;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.InstrumentKind;
import plantair.quantity.Entered;
import plantair.testrecord.InstrumentCopy;

/** With what it was read, as the register had it on the day of the test. */
final class InstrumentColumns {

    private static final String STATUSES =
            Stream.of(CalibrationStatus.values()).map(Enum::name).collect(Collectors.joining(", "));

    private InstrumentColumns() {}

    static Stream<TestColumn> all() {
        Stream<TestColumn> kinds = Stream.of(
                        InstrumentKind.GAUGE,
                        InstrumentKind.TIMER,
                        InstrumentKind.THERMOMETER,
                        InstrumentKind.BAROMETER)
                .flatMap(InstrumentColumns::ofKind);
        return Stream.concat(
                kinds,
                Stream.of(
                        text(
                                "instrument_limits",
                                "largest errors of the instruments as typed, copied from the register",
                                run -> run.test().instruments().stream()
                                        .map(InstrumentColumns::limits)
                                        .collect(Collectors.joining("; "))),
                        text(
                                "override_reason",
                                "why an instrument past its date was used",
                                run -> run.test().overrideReason())));
    }

    private static Stream<TestColumn> ofKind(InstrumentKind kind) {
        String name = kind.name().toLowerCase(Locale.ROOT);
        return Stream.of(
                text(name + "_tag", "tag of the " + name + " named", of(kind, InstrumentCopy::tag)),
                code(
                        name + "_due",
                        "last day of its calibration, as known at the test",
                        of(kind, InstrumentCopy::dueOn)),
                code(
                        name + "_status",
                        "its calibration on the day of the test: " + STATUSES,
                        of(kind, InstrumentCopy::status)));
    }

    private static <V> Function<TestRun, @Nullable V> of(
            InstrumentKind kind, Function<InstrumentCopy, @Nullable V> value) {
        return run -> run.test().instruments().stream()
                .filter(copy -> copy.kind() == kind)
                .findFirst()
                .map(value)
                .orElse(null);
    }

    private static String limits(InstrumentCopy copy) {
        return copy.kind() + " " + copy.tag() + ": "
                + Stream.of(
                                part("span", copy.span()),
                                part("limit", copy.limitPercent()),
                                part("division", copy.division()),
                                part("limit", copy.accuracy()))
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining(", "));
    }

    private static Optional<String> part(String name, @Nullable Entered entered) {
        return Optional.ofNullable(entered).map(known -> name + " " + known.text());
    }
}
