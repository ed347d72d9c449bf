package plantair.web;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.validation.Errors;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.NumberProblem;
import plantair.quantity.Unit;

/**
 * Reads typed text of a form; what cannot be read is rejected beside its field and comes back empty. Every code has its
 * text in messages/web.properties.
 */
public final class FieldChecks {

    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern TIME = Pattern.compile("\\d{2}:\\d{2}(:\\d{2})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");
    private static final Pattern ID = Pattern.compile("\\d{1,18}");
    private static final int EARLIEST_YEAR = 1900;

    private final Errors errors;

    public FieldChecks(Errors errors) {
        this.errors = errors;
    }

    /** A reading that must be there, in any unit of its kind. */
    public Optional<Entered> required(String path, EnteredField field, Class<? extends Unit> kind) {
        if (field.isBlank()) {
            reject(path + ".number", "number.MISSING");
            return Optional.empty();
        }
        return optional(path, field, kind);
    }

    /** A reading that may be left out. */
    public Optional<Entered> optional(String path, EnteredField field, Class<? extends Unit> kind) {
        if (field.isBlank() || !isNumber(path + ".number", field.getNumber().strip(), kind)) {
            return Optional.empty();
        }
        String number = field.getNumber().strip();
        var unit = Unit.byCode(field.getUnit())
                .filter(kind::isInstance)
                .filter(known -> known != DurationUnit.MINUTES_SECONDS);
        if (unit.isEmpty()) {
            reject(path + ".unit", "unit.unknown", quote(field.getUnit()));
        }
        return unit.map(known -> new Entered(number, number.indexOf(':') < 0 ? known : DurationUnit.MINUTES_SECONDS));
    }

    /** A reading in the one unit that its field has. */
    public Optional<Entered> required(String path, EnteredField field, Unit only) {
        return only(path, required(path, field, only.getClass()), only);
    }

    /** A reading in the one unit that its field has, or none. */
    public Optional<Entered> optional(String path, EnteredField field, Unit only) {
        return only(path, optional(path, field, only.getClass()), only);
    }

    private Optional<Entered> only(String path, Optional<Entered> entered, Unit only) {
        var other = entered.map(Entered::unit).filter(unit -> unit != only);
        other.ifPresent(unit -> reject(path + ".unit", "unit.unknown", quote(unit.code())));
        return entered.filter(kept -> other.isEmpty());
    }

    /** Refuses zero and less; for volume, time, speed and the like. */
    public Optional<Entered> positive(String path, Optional<Entered> entered) {
        boolean refused = entered.isPresent() && !(entered.get().value() > 0);
        if (refused) {
            reject(path + ".number", "number.notPositive", entered.get().number());
        }
        return refused ? Optional.empty() : entered;
    }

    /** Refuses what cannot be; a reading of which no quantity can be made cannot. */
    public Optional<Entered> within(String path, Optional<Entered> entered, Predicate<Entered> possible, String code) {
        boolean refused = entered.isPresent() && !isPossible(entered.get(), possible);
        if (refused) {
            reject(path + ".number", code, entered.get().toString());
        }
        return refused ? Optional.empty() : entered;
    }

    private static boolean isPossible(Entered entered, Predicate<Entered> possible) {
        try {
            return possible.test(entered);
        } catch (IllegalArgumentException noQuantity) {
            return false;
        }
    }

    private boolean isNumber(String path, String typed, Class<? extends Unit> kind) {
        if (typed.indexOf(':') >= 0 && kind != DurationUnit.class) {
            reject(path, "number.notTime", quote(typed));
            return false;
        }
        var problem = NumberProblem.in(typed);
        problem.ifPresent(found -> reject(path, "number." + found.name(), quote(typed), dotted(typed)));
        return problem.isEmpty();
    }

    private static String dotted(String typed) {
        String dotted = typed.replace(',', '.');
        return NumberProblem.in(dotted).isEmpty() ? dotted : "7.05";
    }

    /** A text without blanks at its ends; empty when nothing was typed. */
    public Optional<String> text(String path, String value, int max, boolean required) {
        String text = value.replace("\r\n", "\n").strip();
        if (text.isEmpty()) {
            missing(path, "text.missing", required);
            return Optional.empty();
        }
        if (text.length() > max) {
            reject(path, "text.tooLong", String.valueOf(text.length()), String.valueOf(max));
            return Optional.empty();
        }
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t')) {
            reject(path, "text.control");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** A day, as 2024-03-01. */
    public Optional<LocalDate> date(String path, String typed, boolean required) {
        var date = parse(path, typed, new Shape("date", DATE, required), LocalDate::parse);
        if (date.isPresent() && date.get().getYear() < EARLIEST_YEAR) {
            reject(path, "date.tooEarly", quote(typed));
            return Optional.empty();
        }
        return date;
    }

    /** A time of day, as 07:30. */
    public Optional<LocalTime> time(String path, String typed, boolean required) {
        return parse(path, typed, new Shape("time", TIME, required), LocalTime::parse);
    }

    /** A whole number between two bounds, both allowed. */
    public Optional<Integer> whole(String path, String typed, int min, int max, boolean required) {
        var whole = parse(path, typed, new Shape("whole", WHOLE, required), Integer::valueOf);
        if (whole.isPresent() && (whole.get() < min || whole.get() > max)) {
            reject(path, "whole.range", quote(typed), String.valueOf(min), String.valueOf(max));
            return Optional.empty();
        }
        return whole;
    }

    /** The id of a record chosen from a list; whether it exists is for the caller to see. */
    public Optional<Long> id(String path, String typed, boolean required) {
        return parse(path, typed, new Shape("choice", ID, required), Long::valueOf);
    }

    /** One constant of an enum that must be chosen. */
    public <E extends Enum<E>> Optional<E> choice(String path, String typed, Class<E> enumType) {
        missing(path, "choice.missing", typed.isBlank());
        return optionalChoice(path, typed, enumType);
    }

    /** One constant of an enum, or none. */
    public <E extends Enum<E>> Optional<E> optionalChoice(String path, String typed, Class<E> enumType) {
        var chosen = Stream.of(enumType.getEnumConstants())
                .filter(constant -> constant.name().equals(typed))
                .findFirst();
        if (chosen.isEmpty() && !typed.isBlank()) {
            reject(path, "choice.unknown", quote(typed));
        }
        return chosen;
    }

    private record Shape(String name, Pattern pattern, boolean required) {}

    private <T> Optional<T> parse(String path, String typed, Shape shape, Function<String, T> parser) {
        String text = typed.strip();
        if (text.isEmpty()) {
            missing(path, shape.name() + ".missing", shape.required());
            return Optional.empty();
        }
        try {
            if (shape.pattern().matcher(text).matches()) {
                return Optional.of(parser.apply(text));
            }
        } catch (DateTimeParseException notInTheCalendar) {
            // falls through to the same answer as any other unreadable text
        }
        reject(path, shape.name() + ".unknown", quote(typed));
        return Optional.empty();
    }

    private void missing(String path, String code, boolean wrong) {
        if (wrong) {
            reject(path, code);
        }
    }

    private void reject(String path, String code, Object... args) {
        errors.rejectValue(path, code, args, code);
    }

    /** What was typed, cut so that a message stays readable. */
    private static String quote(String typed) {
        String text = typed.strip();
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
