package plantair.pumpup;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;

/** docs/worked-example.md is what the program does: readings and every number are taken from the page. */
class WorkedExampleTests {

    private static final Map<String, Double> SI = Map.ofEntries(
            entry("L", 1e-3),
            entry("m", 1.0),
            entry("Pa", 1.0),
            entry("bar", 1e5),
            entry("K", 1.0),
            entry("s", 1.0),
            entry("1/s", 1.0),
            entry("Pa/K", 1.0),
            entry("L/s", 1e-3),
            entry("1", 1.0),
            entry("%", 0.01));

    private final List<List<String>> page = rows();

    @Test
    void showsEveryNumberOfTheWorking() {
        PumpUpResult result = PumpUpMethods.version("PU-1").evaluate(readings());

        List<List<String>> printed = rowsUnder("Equation", 6);

        assertThat(printed).hasSizeGreaterThan(70).allSatisfy(row -> {
            double unit = SI.get(row.get(5));
            String value = row.get(4);
            assertThat(candidates(result.working(), row))
                    .as(String.join(" ", row))
                    .anySatisfy(si -> assertThat(si / unit).isCloseTo(Double.parseDouble(value), within(half(value))));
        });
    }

    /** The page leaves out what a step takes over from a reading or an earlier step, and nothing else. */
    @Test
    void leavesOutNoStep() {
        PumpUpResult result = PumpUpMethods.version("PU-1").evaluate(readings());

        List<String> printed = rowsUnder("Equation", 6).stream()
                .map(row -> row.get(0) + row.get(1) + row.get(2))
                .distinct()
                .toList();

        assertThat(result.working().stream()
                        .map(step -> step.equation() + (step.run() == 0 ? "" : step.run()) + step.label())
                        .distinct()
                        .toList())
                .containsExactlyElementsOf(printed);
    }

    @Test
    void showsTheUncertainty() {
        Uncertainty uncertainty =
                PumpUpMethods.version("PU-1").evaluate(readings()).uncertainty();

        Map<String, String> printed = rowsUnder("Component", 3).stream()
                .collect(Collectors.toMap(row -> row.get(0), row -> row.get(1).replace(" %", "")));

        assertThat(100 * uncertainty.combined())
                .isCloseTo(Double.parseDouble(printed.remove("combined")), within(0.0005));
        assertThat(100 * uncertainty.shared()).isCloseTo(Double.parseDouble(printed.remove("shared")), within(0.0005));
        assertThat(100 * uncertainty.random())
                .isCloseTo(Double.parseDouble(printed.remove("new in each test")), within(0.0005));
        assertThat(uncertainty.components()).hasSameSizeAs(printed.keySet()).allSatisfy(component -> {
            double percent = Double.parseDouble(printed.get(component.source().name()));
            assertThat(100 * component.relative()).isCloseTo(percent, within(0.0005));
        });
    }

    @Test
    void saysWithWhatAComponentIsShared() {
        Uncertainty uncertainty =
                PumpUpMethods.version("PU-1").evaluate(readings()).uncertainty();

        Map<String, String> printed =
                rowsUnder("Component", 3).stream().collect(Collectors.toMap(row -> row.get(0), row -> row.get(2)));

        assertThat(uncertainty.components()).allSatisfy(component -> {
            String shared = component.sharedWith() == null
                    ? "no"
                    : component.sharedWith().name().toLowerCase(Locale.ROOT);
            assertThat(printed.get(component.source().name())).isEqualTo(shared);
        });
    }

    @Test
    void showsTheFindings() {
        List<String> codes = PumpUpMethods.version("PU-1").evaluate(readings()).findings().stream()
                .map(finding -> finding.code().name())
                .toList();

        assertThat(rowsUnder("Finding", 2)).extracting(row -> row.get(0)).containsExactlyInAnyOrderElementsOf(codes);
    }

    private static double half(String printed) {
        int point = printed.indexOf('.');
        int decimals = point < 0 ? 0 : printed.length() - point - 1;
        return 0.5000001 * Math.pow(10, -decimals);
    }

    private static Stream<Double> figures(WorkingStep step, String symbol) {
        return step.figures().stream()
                .filter(figure -> figure.symbol().equals(symbol))
                .map(Figure::si);
    }

    /** One number, but for the rating points, which are two steps of the same name. */
    private static List<Double> candidates(List<WorkingStep> working, List<String> row) {
        int run = row.get(1).isEmpty() ? 0 : Integer.parseInt(row.get(1));
        List<Double> found = working.stream()
                .filter(step -> step.equation().equals(row.get(0))
                        && step.run() == run
                        && step.label().equals(row.get(2)))
                .flatMap(step -> figures(step, row.get(3)))
                .toList();
        assertThat(found).hasSizeLessThanOrEqualTo(row.get(0).equals("M13-point") ? 2 : 1);
        return found;
    }

    private PumpUpReadings readings() {
        List<RunReadings> runs = new ArrayList<>();
        for (List<String> row : rowsUnder("Run", 6)) {
            double[] run = row.stream().mapToDouble(Double::parseDouble).toArray();
            runs.add(RunReadings.of(bar(run[1]), bar(run[2]), new Elapsed(run[3]))
                    .withAir(celsius(run[4]), celsius(run[5])));
        }
        return new PumpUpReadings(
                List.of(
                        part("Receiver", VolumePart.Kind.RECEIVER),
                        part("Pipe to valve", VolumePart.Kind.PIPE),
                        part("Water left", VolumePart.Kind.WATER)),
                new Station(null, null, new Length(reading("Elevation"))),
                celsius(reading("Intake temperature")),
                new RelativeHumidity(reading("Relative humidity") / 100),
                AirTemperature.MEASURED,
                runs,
                new ShaftSpeed(reading("Shaft speed")),
                new ShaftSpeed(reading("Rated shaft speed")),
                List.of(rated(6), rated(9)),
                null,
                new Circumstances(instruments(), hold(), MachineData.UNKNOWN));
    }

    private Instruments instruments() {
        var gauge = new GaugeAccuracy(
                difference("Gauge span"),
                reading("Gauge limit of error") / 100,
                difference("Gauge division"),
                List.of());
        return new Instruments(
                gauge,
                reading("Clock, standard uncertainty"),
                reading("Thermometer, standard uncertainty"),
                Instruments.UNNAMED.barometerU());
    }

    private StaticHold hold() {
        return new StaticHold(
                bar(reading("Hold, first")),
                bar(reading("Hold, last")),
                new Elapsed(reading("Hold, time")),
                StaticHold.Place.TEST_VOLUME);
    }

    private PressureDifference difference(String name) {
        return PressureDifference.of(reading(name), PressureUnit.BAR);
    }

    private RatingPoint rated(double bar) {
        double flow = reading("Rated flow at " + bar + " bar");
        return new RatingPoint(bar(bar), FlowRate.of(flow, FlowUnit.LITRE_PER_SECOND), FlowBasis.INTAKE);
    }

    private VolumePart part(String label, VolumePart.Kind kind) {
        return new VolumePart(label, kind, VesselVolume.of(reading(label), VolumeUnit.LITRE));
    }

    private static GaugePressure bar(double value) {
        return GaugePressure.of(value, PressureUnit.BAR);
    }

    private static Temperature celsius(double value) {
        return Temperature.of(value, TemperatureUnit.CELSIUS);
    }

    private double reading(String name) {
        return rowsUnder("Reading", 3).stream()
                .filter(row -> row.get(0).equals(name))
                .mapToDouble(row -> Double.parseDouble(row.get(1)))
                .findFirst()
                .orElseThrow();
    }

    /** The rows of every table whose first heading is this. */
    private List<List<String>> rowsUnder(String heading, int columns) {
        List<List<String>> rows = new ArrayList<>();
        boolean inside = false;
        for (List<String> row : page) {
            if (row.isEmpty()) {
                inside = false;
            } else if (row.get(0).equals(heading) && row.size() == columns) {
                inside = true;
            } else if (inside && !row.get(0).startsWith("---")) {
                rows.add(row);
            }
        }
        assertThat(rows)
                .as(heading)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row).hasSize(columns));
        return rows;
    }

    /** A line as its cells; empty for a line outside tables. */
    private static List<List<String>> rows() {
        try {
            return Files.readAllLines(Path.of("docs", "worked-example.md")).stream()
                    .map(line -> line.startsWith("|")
                            ? Stream.of(line.substring(1, line.lastIndexOf('|')).split("\\|", -1))
                                    .map(String::strip)
                                    .toList()
                            : List.<String>of())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
