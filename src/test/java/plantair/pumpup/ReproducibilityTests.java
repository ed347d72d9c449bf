package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.pumpup.ReferenceRows.number;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.PressureDifference;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * PU-1 gives its old answers to the last digit, for as long as there are records made with it. The archive is only ever
 * added to; a difference means that the method was edited, or that this machine computes otherwise.
 */
class ReproducibilityTests {

    private static final String ARCHIVE = "pu_1_archive.csv";

    static List<Map<String, String>> archive() {
        return ReferenceRows.read(ARCHIVE).rows();
    }

    @ParameterizedTest
    @MethodSource("archive")
    void givesTheOldAnswerToTheLastDigit(Map<String, String> row) {
        PumpUpResult result = PumpUpMethods.version("PU-1").evaluate(readings(row));

        assertThat(answer(result)).isEqualTo(row.get("answer"));
    }

    @Test
    void holdsEveryTreatmentOfTheAir() {
        assertThat(archive()).extracting(row -> row.get("air")).contains("MEASURED", "SETTLED", "NOT_MEASURED");
    }

    @Test
    void holdsGaugesAndLeaks() {
        assertThat(archive()).extracting(row -> row.get("hold_place")).contains("TEST_VOLUME", "CHECK_VALVE");
        assertThat(archive()).anySatisfy(row -> assertThat(row.get("error")).isNotEmpty());
    }

    private static PumpUpReadings readings(Map<String, String> row) {
        AirTemperature air = AirTemperature.valueOf(row.get("air"));
        List<RunReadings> runs = Stream.of(row.get("seconds").split(" "))
                .map(Double::parseDouble)
                .map(seconds -> new RunReadings(
                        new GaugePressure(number(row, "p1")),
                        new GaugePressure(number(row, "p2")),
                        new Elapsed(seconds),
                        temperature(row, "t1"),
                        temperature(row, "t2"),
                        row.get("settled").isEmpty() ? null : new GaugePressure(number(row, "settled")),
                        temperature(row, "settled_air")))
                .toList();
        return new PumpUpReadings(
                List.of(new VolumePart("all", VolumePart.Kind.RECEIVER, new VesselVolume(number(row, "volume")))),
                station(row),
                new Temperature(number(row, "intake")),
                row.get("humidity").isEmpty() ? null : new RelativeHumidity(number(row, "humidity")),
                air,
                runs,
                new ShaftSpeed(number(row, "speed")),
                new ShaftSpeed(number(row, "rated_speed")),
                List.of(
                        new RatingPoint(new GaugePressure(6e5), new FlowRate(0.02), FlowBasis.INTAKE),
                        new RatingPoint(new GaugePressure(9e5), new FlowRate(0.018), FlowBasis.INTAKE)),
                null,
                new Circumstances(instruments(row), hold(row), MachineData.UNKNOWN));
    }

    private static Instruments instruments(Map<String, String> row) {
        if (row.get("span").isEmpty()) {
            return Instruments.UNNAMED;
        }
        List<GaugeError> errors = row.get("error").isEmpty()
                ? List.of()
                : List.of(
                        new GaugeError(new GaugePressure(0), new PressureDifference(0)),
                        new GaugeError(new GaugePressure(1e6), new PressureDifference(number(row, "error"))));
        var gauge = new GaugeAccuracy(
                new PressureDifference(number(row, "span")),
                number(row, "limit"),
                new PressureDifference(number(row, "division")),
                errors);
        return new Instruments(gauge, 0.2, 1, 300);
    }

    private static @Nullable StaticHold hold(Map<String, String> row) {
        return row.get("hold_from").isEmpty()
                ? null
                : new StaticHold(
                        new GaugePressure(number(row, "hold_from")),
                        new GaugePressure(number(row, "hold_to")),
                        new Elapsed(300),
                        StaticHold.Place.valueOf(row.get("hold_place")));
    }

    private static Station station(Map<String, String> row) {
        return row.get("barometer").isEmpty()
                ? new Station(null, null, new Length(number(row, "elevation")))
                : new Station(new AbsolutePressure(number(row, "barometer")), null, null);
    }

    private static @Nullable Temperature temperature(Map<String, String> row, String name) {
        return row.get(name).isEmpty() ? null : new Temperature(number(row, name));
    }

    /** Runs, mean, hand figure, at rated speed, ratio to the rating, uncertainty, verdict, leak, standard flows, findings. */
    private static String answer(PumpUpResult result) {
        Stream<Double> numbers = Stream.of(
                        result.runs().stream().map(run -> run.freeAir().cubicMetresPerSecond()),
                        Stream.of(result.freeAir(), result.handMethod(), result.atRatedSpeed())
                                .map(flow -> flow == null ? Double.NaN : flow.cubicMetresPerSecond()),
                        Stream.of(
                                result.rating() == null
                                        ? Double.NaN
                                        : result.rating().ratio(),
                                result.uncertainty().random(),
                                result.uncertainty().shared(),
                                result.verdict() == null
                                        ? Double.NaN
                                        : result.verdict().probability(),
                                result.leak() == null
                                        ? Double.NaN
                                        : result.leak().inRuns().cubicMetresPerSecond()),
                        result.standardFlows().stream()
                                .map(standard -> standard.flow().cubicMetresPerSecond()))
                .flatMap(each -> each);
        Stream<String> findings =
                result.findings().stream().map(finding -> finding.code().name());
        return Stream.concat(numbers.map(number -> Double.toString(number)), findings)
                .collect(Collectors.joining(" "));
    }
}
