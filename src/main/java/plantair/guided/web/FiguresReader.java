package plantair.guided.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;
import plantair.guided.MachineFigures;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/** Reads the quarterly readings of a machine. */
final class FiguresReader {

    private static final double HOTTEST_K = 773;

    private final String at;
    private final Errors errors;
    private final FieldChecks checks;

    /** @param at what stands before the names of the fields */
    FiguresReader(String at, Errors errors) {
        this.at = at;
        this.errors = errors;
        this.checks = new FieldChecks(errors);
    }

    MachineFigures read(FiguresForm form) {
        return new MachineFigures(
                fixed("hours", form.getHours(), FixedUnit.HOUR),
                fixed("loadedHours", form.getLoadedHours(), FixedUnit.HOUR),
                fixed("current1", form.getCurrent1(), FixedUnit.AMPERE),
                fixed("current2", form.getCurrent2(), FixedUnit.AMPERE),
                fixed("current3", form.getCurrent3(), FixedUnit.AMPERE),
                pressure("interstagePressure", form.getInterstagePressure()),
                temperature("dischargeTemperature", form.getDischargeTemperature()),
                checks.optionalChoice(at + "oilLevel", form.getOilLevel(), MachineFigures.OilLevel.class)
                        .orElse(null),
                pressure("filterDrop", form.getFilterDrop()),
                pressure("separatorDrop", form.getSeparatorDrop()),
                checks.optionalChoice(at + "belt", form.getBelt(), MachineFigures.Belt.class)
                        .orElse(null),
                fixed("speed", form.getSpeed(), FixedUnit.RPM),
                checks.text(at + "noise", form.getNoise(), 200, false).orElse(""));
    }

    private @Nullable Entered fixed(String name, EnteredField field, FixedUnit unit) {
        return notBelowZero(name, checks.optional(at + name, field, unit));
    }

    private @Nullable Entered pressure(String name, EnteredField field) {
        Entered entered = notBelowZero(name, checks.optional(at + name, field, PressureUnit.class));
        return entered != null && isImpossible(entered) ? reject(name, entered) : entered;
    }

    /** More than any gauge of a compressor shows. */
    private static boolean isImpossible(Entered entered) {
        return GaugePressure.of(entered).pascals() > 1e7;
    }

    private @Nullable Entered temperature(String name, EnteredField field) {
        Entered entered =
                checks.optional(at + name, field, TemperatureUnit.class).orElse(null);
        try {
            return entered != null && Temperature.of(entered).kelvin() > HOTTEST_K ? reject(name, entered) : entered;
        } catch (IllegalArgumentException belowAbsoluteZero) {
            return entered == null ? null : reject(name, entered);
        }
    }

    private @Nullable Entered notBelowZero(String name, Optional<Entered> entered) {
        return entered.isPresent() && entered.get().value() < 0 ? reject(name, entered.get()) : entered.orElse(null);
    }

    private @Nullable Entered reject(String name, Entered entered) {
        errors.rejectValue(at + name + ".number", "guided.figureImpossible", new Object[] {entered.toString()}, null);
        return null;
    }
}
