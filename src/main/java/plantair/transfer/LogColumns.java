package plantair.transfer;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The columns that are read of a log of tests. tests.csv of the export has the same names for the same things. */
public final class LogColumns {

    /** Readings of one run. */
    static final List<String> RUN_READINGS = List.of(
            "start_pressure",
            "stop_pressure",
            "elapsed",
            "start_air",
            "stop_air",
            "settled_pressure",
            "settled_air",
            "settled_wait");

    private static final List<String> TEST_READINGS = List.of(
            "intake_temperature",
            "intake_humidity",
            "barometer",
            "water",
            "speed",
            "hold_start",
            "hold_end",
            "hold_wait",
            "input_power",
            "voltage",
            "motor_current",
            "power_factor",
            "motor_efficiency");

    /** Columns that say which test and run a row is; the log's own names, of no meaning elsewhere. */
    static final Set<String> NAMES = Set.of("test", "test_id", "run");

    /** What stands once in a test, readings aside. */
    private static final List<String> TEST_WORDS = List.of(
            "site",
            "compressor",
            "date",
            "time",
            "performed_at",
            "tester",
            "receivers",
            "pipes",
            "volumes",
            "gauge_tag",
            "timer_tag",
            "thermometer_tag",
            "barometer_tag",
            "override_reason",
            "air_temperature",
            "hold_place",
            "others_off",
            "speed_held",
            "supersedes",
            "reason",
            "notes",
            "submission",
            "method_version",
            "ratings");

    /** What must be in the header. */
    static final List<String> NEEDED = List.of(
            "site",
            "compressor",
            "tester",
            "intake_temperature",
            "intake_temperature_unit",
            "start_pressure",
            "start_pressure_unit",
            "stop_pressure",
            "stop_pressure_unit",
            "elapsed",
            "elapsed_unit");

    static final Set<String> RUN = withUnits(RUN_READINGS).collect(Collectors.toUnmodifiableSet());

    static final Set<String> TEST =
            Stream.concat(TEST_WORDS.stream(), withUnits(TEST_READINGS)).collect(Collectors.toUnmodifiableSet());

    private LogColumns() {}

    private static Stream<String> withUnits(List<String> readings) {
        return readings.stream().flatMap(reading -> Stream.of(reading, reading + "_unit"));
    }

    /** The header of the template: what a log written by hand may have. */
    public static List<String> template() {
        return Stream.of(
                        Stream.of("test", "site", "compressor", "date", "time", "tester", "receivers", "pipes"),
                        withUnits(RUN_READINGS),
                        withUnits(TEST_READINGS),
                        Stream.of(
                                "others_off",
                                "speed_held",
                                "hold_place",
                                "gauge_tag",
                                "timer_tag",
                                "thermometer_tag",
                                "barometer_tag",
                                "override_reason",
                                "notes"))
                .flatMap(columns -> columns)
                .toList();
    }

    static boolean isRead(String column) {
        return NAMES.contains(column) || RUN.contains(column) || TEST.contains(column);
    }
}
