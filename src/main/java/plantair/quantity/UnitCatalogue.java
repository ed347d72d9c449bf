package plantair.quantity;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The units of {@link Unit#all()}, looked up once for each reading that is read from a record. */
final class UnitCatalogue {

    static final List<Unit> ALL = Stream.<Unit[]>of(
                    PressureUnit.values(),
                    VolumeUnit.values(),
                    FlowUnit.values(),
                    TemperatureUnit.values(),
                    DurationUnit.values(),
                    LengthUnit.values(),
                    PowerUnit.values(),
                    SpecificPowerUnit.values(),
                    FixedUnit.values())
            .flatMap(Stream::of)
            .toList();

    static final Map<String, Unit> BY_CODE =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Unit::code, Function.identity()));

    private UnitCatalogue() {}
}
