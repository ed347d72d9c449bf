package plantair.quantity;

/**
 * A reading exactly as it was typed, with the unit it was typed in. The only thing a record keeps; every quantity is
 * derived from it.
 *
 * @param number the typed digits, without blanks at the ends; {@code 95.0} and {@code 95} are kept apart
 * @param unit the unit on the gauge, plate or clock
 */
public record Entered(String number, Unit unit) {

    /** @throws IllegalArgumentException when the text is no number, or a colon stands outside minutes and seconds */
    public Entered {
        number = number.strip();
        var problem = NumberProblem.in(number);
        if (problem.isPresent()) {
            throw new IllegalArgumentException("number \"" + number + "\": " + problem.get());
        }
        if (number.indexOf(':') >= 0 != (unit == DurationUnit.MINUTES_SECONDS)) {
            throw new IllegalArgumentException("number \"" + number + "\" does not suit unit " + unit.code());
        }
    }

    /** Reads what {@link #text()} wrote. */
    public static Entered parse(String text) {
        int blank = text.indexOf(' ');
        if (blank < 0) {
            throw new IllegalArgumentException("no unit in \"" + text + "\"");
        }
        String code = text.substring(blank + 1);
        Unit unit = Unit.byCode(code).orElseThrow(() -> new IllegalArgumentException("unknown unit " + code));
        return new Entered(text.substring(0, blank), unit);
    }

    /** Number, blank, unit code: {@code 95.0 [psi]}. */
    public String text() {
        return number + " " + unit.code();
    }

    /** For people: {@code 95.0 psi}. */
    @Override
    public String toString() {
        return unit == DurationUnit.MINUTES_SECONDS ? number + " (m:ss)" : number + " " + unit.symbol();
    }

    /** The number in its own unit; minutes and seconds as seconds. */
    public double value() {
        int colon = number.indexOf(':');
        return colon < 0
                ? Double.parseDouble(number)
                : 60 * Double.parseDouble(number.substring(0, colon)) + Double.parseDouble(number.substring(colon + 1));
    }

    /**
     * A percentage as a part: 0.5 % is 0.005.
     *
     * @throws IllegalArgumentException when this is no percentage
     */
    public double part() {
        if (unit != FixedUnit.PERCENT) {
            throw new IllegalArgumentException(text() + " is not in percent");
        }
        return value() / 100;
    }

    /**
     * The unit as one of the wanted quantity.
     *
     * @throws IllegalArgumentException when this is a reading of another quantity
     */
    <U extends Unit> U unitAs(Class<U> wanted) {
        if (!wanted.isInstance(unit)) {
            throw new IllegalArgumentException(text() + " is not in a " + wanted.getSimpleName());
        }
        return wanted.cast(unit);
    }
}
