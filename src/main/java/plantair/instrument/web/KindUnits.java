package plantair.instrument.web;

import java.util.List;
import java.util.stream.Stream;
import plantair.instrument.InstrumentKind;
import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.quantity.Unit;
import plantair.web.Choice;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** The units that the forms of a kind of instrument offer. */
final class KindUnits {

    private KindUnits() {}

    static List<Choice> choices(InstrumentKind kind) {
        return switch (kind) {
            case GAUGE -> UnitChoices.pressure();
            case TIMER -> UnitChoices.duration();
            case THERMOMETER -> UnitChoices.temperature();
            case BAROMETER -> UnitChoices.barometer();
            case OTHER ->
                Stream.of(FixedUnit.values())
                        .flatMap(unit -> UnitChoices.only(unit).stream())
                        .toList();
        };
    }

    /** What a blank field proposes. */
    static Unit proposed(InstrumentKind kind, UnitSet units) {
        return switch (kind) {
            case GAUGE -> units.pressure();
            case TIMER -> DurationUnit.SECOND;
            case THERMOMETER -> units.temperature();
            case BAROMETER -> units.barometer();
            case OTHER -> FixedUnit.PERCENT;
        };
    }

    /** Whether instruments of this kind have a span worth noting. */
    static boolean hasSpan(InstrumentKind kind) {
        return kind != InstrumentKind.TIMER && kind != InstrumentKind.OTHER;
    }
}
