package plantair.transfer;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.springframework.validation.FieldError;
import org.springframework.validation.MapBindingResult;
import plantair.export.SafeText;
import plantair.pumpup.PossibleRange;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.Unit;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/** Reads the cells of one row by the rules of the forms. */
final class Cells {

    /** What logs write for a unit beside its code and its symbol. */
    private static final Map<String, String> SPELLINGS = Map.ofEntries(
            Map.entry("psig", "[psi]"),
            Map.entry("barg", "bar"),
            Map.entry("bar(g)", "bar"),
            Map.entry("mbar", "hPa"),
            Map.entry("f", TemperatureUnit.FAHRENHEIT.code()),
            Map.entry("c", TemperatureUnit.CELSIUS.code()),
            Map.entry("sec", DurationUnit.SECOND.code()),
            Map.entry(DurationUnit.MINUTES_SECONDS.code(), DurationUnit.SECOND.code()));

    private final Row row;
    private final MapBindingResult errors = new MapBindingResult(new HashMap<>(), "row");
    private final FieldChecks checks = new FieldChecks(errors);

    Cells(Row row) {
        this.row = row;
    }

    FieldChecks checks() {
        return checks;
    }

    String cell(String column) {
        return row.cell(column).strip();
    }

    Optional<String> text(String column, int max, boolean required) {
        return checks.text(column, SafeText.undo(row.cell(column)), max, required);
    }

    /** A reading from its cell and the cell of its unit. */
    Optional<Entered> reading(String column, Class<? extends Unit> kind, boolean required) {
        EnteredField field = field(column, kind);
        return required ? checks.required(column, field, kind) : checks.optional(column, field, kind);
    }

    /** A reading in the one unit that it has; the cell of the unit may be empty. */
    Optional<Entered> reading(String column, Unit only) {
        EnteredField field = field(column, only.getClass());
        if (field.getUnit().isEmpty() || field.getUnit().equalsIgnoreCase(only.symbol())) {
            field.setUnit(only.code());
        }
        return checks.optional(column, field, only);
    }

    private EnteredField field(String column, Class<? extends Unit> kind) {
        var field = new EnteredField();
        field.setNumber(cell(column));
        field.setUnit(unit(cell(column + "_unit"), kind));
        return field;
    }

    private static String unit(String typed, Class<? extends Unit> kind) {
        String spelled = SPELLINGS.getOrDefault(typed.replace("°", "").toLowerCase(Locale.ROOT), typed);
        return Unit.all().stream()
                .filter(kind::isInstance)
                .filter(unit -> unit.code().equals(spelled) || unit.symbol().equalsIgnoreCase(typed))
                .map(Unit::code)
                .findFirst()
                .map(code -> code.equals(DurationUnit.MINUTES_SECONDS.code()) ? DurationUnit.SECOND.code() : code)
                .orElse(typed);
    }

    /** A reading that can be true. */
    Optional<Entered> possible(
            String column, Optional<Entered> entered, PossibleRange range, ToDoubleFunction<Entered> si) {
        if (entered.isPresent() && !isPossible(entered.get(), range, si)) {
            reject(column, "range." + range.name(), entered.get());
            return Optional.empty();
        }
        return entered;
    }

    private static boolean isPossible(Entered entered, PossibleRange range, ToDoubleFunction<Entered> si) {
        try {
            return range.contains(si.applyAsDouble(entered));
        } catch (IllegalArgumentException belowZero) {
            return false;
        }
    }

    /** Yes, no, or nothing said. */
    Optional<Boolean> answer(String column) {
        String typed = cell(column).toLowerCase(Locale.ROOT);
        if (!typed.isEmpty() && !typed.matches("true|false|yes|no")) {
            reject(column, "choice.unknown", typed);
        }
        return typed.isEmpty() ? Optional.empty() : Optional.of(typed.matches("true|yes"));
    }

    void reject(String column, String code, Object... args) {
        var words = Remark.words(code, args);
        errors.rejectValue(column, code, words.getArguments(), code);
    }

    /** Whether every cell read so far could be understood. */
    boolean isSound() {
        return !errors.hasErrors();
    }

    /** Tells what could not be understood. */
    void tell(Remarks problems) {
        for (FieldError error : errors.getFieldErrors()) {
            String column = error.getField().replaceAll("\\.number$", "").replaceAll("\\.unit$", "_unit");
            problems.add(row.file(), row.line(), column, error);
        }
    }
}
