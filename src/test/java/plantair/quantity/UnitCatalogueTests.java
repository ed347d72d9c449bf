package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of docs/units.md against the program. */
class UnitCatalogueTests {

    private record Row(String quantity, String symbol, String code, String si) {}

    @Test
    void listsEveryUnitOnceInTheOrderOfTheProgram() throws IOException {
        assertThat(rows()).extracting(Row::code).containsExactlyElementsOf(codes());
        assertThat(codes()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void saysWhatTheProgramSays(Row row) {
        Unit unit = Unit.byCode(row.code()).orElseThrow();

        assertThat(unit.symbol()).isEqualTo(row.symbol());
        assertThat(unit.getClass().getSimpleName()).isEqualTo(row.quantity() + "Unit");
        Optional<Double> si = oneInSi(unit);
        assertThat(si.isPresent()).isEqualTo(!row.si().equals("not converted"));
        si.ifPresent(value ->
                assertThat(value).isCloseTo(Double.parseDouble(row.si().split(" ")[0]), withinPercentage(1e-8)));
    }

    @Test
    void knowsNoUnitOutsideTheCatalogue() {
        assertThat(Unit.byCode("psi")).isEmpty();
        assertThat(Unit.byCode("")).isEmpty();
    }

    private static List<String> codes() {
        return Unit.all().stream().map(Unit::code).toList();
    }

    static List<Row> rows() throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("docs/units.md"))) {
            return lines.filter(line -> line.startsWith("| ") && line.contains("`"))
                    .map(line -> line.split(" *\\| *"))
                    .map(cells -> new Row(cells[1], cells[2], cells[3].replace("`", ""), cells[4]))
                    .toList();
        }
    }

    private static Optional<Double> oneInSi(Unit unit) {
        if (unit instanceof PressureUnit pressure) {
            return Optional.of(pressure.toSi(1));
        }
        if (unit instanceof VolumeUnit volume) {
            return Optional.of(volume.toSi(1));
        }
        if (unit instanceof FlowUnit flow) {
            return Optional.of(flow.toSi(1));
        }
        if (unit instanceof TemperatureUnit temperature) {
            return Optional.of(temperature.toSi(1));
        }
        if (unit instanceof DurationUnit duration) {
            return Optional.of(duration.toSi(1));
        }
        if (unit instanceof LengthUnit length) {
            return Optional.of(length.toSi(1));
        }
        if (unit instanceof SpecificPowerUnit specific) {
            return Optional.of(PowerUnit.KW.toSi(1) / specific.flow().cubicMetresPerSecond());
        }
        return unit instanceof PowerUnit power ? Optional.of(power.toSi(1)) : Optional.empty();
    }
}
