package plantair.testrecord;

import plantair.quantity.Entered;

/**
 * A gauge mark passed in a run, as typed.
 *
 * @param pressure gauge pressure
 * @param at time from the start of the run
 */
public record Lap(Entered pressure, Entered at) {

    private static final String BETWEEN = " @ ";

    /** Reads what {@link #text()} wrote. */
    static Lap parse(String text) {
        String[] both = text.split(BETWEEN, 2);
        if (both.length < 2) {
            throw new IllegalArgumentException("no mark: " + text);
        }
        return new Lap(Entered.parse(both[0]), Entered.parse(both[1]));
    }

    /** As it is kept: {@code 150 [psi] @ 12.4 s}. */
    public String text() {
        return pressure.text() + BETWEEN + at.text();
    }

    /** As people read and type it: {@code 150 psi @ 12.4 s}. */
    @Override
    public String toString() {
        return pressure + BETWEEN + at;
    }
}
