package plantair.export;

import static plantair.export.TestColumn.code;
import static plantair.export.TestColumn.number;
import static plantair.export.TestColumn.reading;
import static plantair.export.TestColumn.text;
import static plantair.export.TestColumn.typed;

import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.RunEntry;
import plantair.testrecord.TestConditions;

/** What was read, as typed, and the same in SI. */
final class ReadingColumns {

    private ReadingColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(ofRun(), ofTest(), ofRegister()).flatMap(columns -> columns);
    }

    private static Stream<TestColumn> ofRun() {
        return Stream.of(
                        reading(
                                "start_pressure",
                                "gauge pressure at the start",
                                run(RunEntry::startPressure),
                                Si.GAUGE),
                        reading("stop_pressure", "gauge pressure at the stop", run(RunEntry::stopPressure), Si.GAUGE),
                        reading("elapsed", "time from start to stop", run(RunEntry::elapsed), Si.TIME),
                        reading("start_air", "receiver air at the start", run(RunEntry::startAir), Si.TEMPERATURE),
                        reading("stop_air", "receiver air at the stop", run(RunEntry::stopAir), Si.TEMPERATURE),
                        reading(
                                "settled_pressure",
                                "gauge pressure after waiting",
                                run(RunEntry::settledPressure),
                                Si.GAUGE),
                        reading("settled_air", "receiver air after waiting", run(RunEntry::settledAir), Si.TEMPERATURE),
                        reading("settled_wait", "how long was waited", run(RunEntry::settledWait), Si.TIME))
                .flatMap(columns -> columns)
                .map(TestColumn::ofRun);
    }

    private static Stream<TestColumn> ofTest() {
        return Stream.of(
                        Stream.of(code(
                                "air_temperature",
                                "how the receiver air was treated: MEASURED, SETTLED or NOT_MEASURED",
                                run -> run.test().conditions().airTemperature())),
                        reading(
                                "intake_temperature",
                                "air at the intake",
                                once(TestConditions::intakeTemperature),
                                Si.TEMPERATURE),
                        typed(
                                "intake_humidity",
                                "relative humidity at the intake",
                                once(TestConditions::intakeHumidity)),
                        reading(
                                "barometer",
                                "barometer read in the test",
                                once(TestConditions::barometer),
                                Si.ABSOLUTE),
                        reading("water", "liquid water left inside", once(TestConditions::water), Si.VOLUME),
                        typed("speed", "shaft speed read", once(TestConditions::speed)))
                .flatMap(columns -> columns);
    }

    /** Copied into the test when it was recorded. */
    private static Stream<TestColumn> ofRegister() {
        return Stream.of(
                        typed(
                                "rated_speed",
                                "rated shaft speed, copied from the plate",
                                once(TestConditions::ratedSpeed)),
                        reading(
                                "site_elevation",
                                "elevation, copied from the site",
                                once(TestConditions::siteElevation),
                                Si.LENGTH),
                        reading(
                                "site_barometer",
                                "usual barometer, copied from the site",
                                once(TestConditions::siteBarometer),
                                Si.ABSOLUTE),
                        Stream.of(
                                number(
                                        "station_pressure_pa",
                                        "absolute pressure of the place that the result uses",
                                        run -> ResultProjection.stationPressure(run.test())
                                                .pascals()),
                                text(
                                        "volumes",
                                        "receivers and pipe pieces as typed, copied from the register",
                                        run -> CopyText.volumes(run.test().volumes())),
                                number(
                                        "net_volume_m3",
                                        "receivers and pipes less water",
                                        run -> run.result().netVolume().cubicMetres()),
                                text(
                                        "ratings",
                                        "rating points as typed, copied from the plate",
                                        run -> CopyText.ratings(run.test().ratings()))))
                .flatMap(columns -> columns);
    }

    private static Function<TestRun, @Nullable Entered> run(Function<RunEntry, @Nullable Entered> reading) {
        return run -> reading.apply(run.typed());
    }

    private static Function<TestRun, @Nullable Entered> once(Function<TestConditions, @Nullable Entered> reading) {
        return run -> reading.apply(run.test().conditions());
    }
}
