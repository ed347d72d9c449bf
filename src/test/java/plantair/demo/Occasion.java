package plantair.demo;

import java.time.LocalDate;

/**
 * One test to be made.
 *
 * @param date its day
 * @param trouble what is wrong that day
 * @param note what the tester writes; empty for whatever comes to mind
 */
record Occasion(LocalDate date, Trouble trouble, String note) {

    /** What can be wrong. */
    enum Trouble {
        /** Nothing. */
        NONE,
        /** The machine was not warm yet. */
        COLD_START,
        /** The isolating valve passes air. */
        LEAKING_VALVE,
        /** Water stands in the tank and nobody knows. */
        WATER,
        /** Only two runs were made. */
        HURRY
    }

    /** Flow of a run as a part of the flow of the warm machine. */
    double runFactor(int run) {
        return trouble == Trouble.COLD_START ? 1.06 - 0.03 * run : 1;
    }

    /** Air lost by the valve as a part of the flow. */
    double leak() {
        return trouble == Trouble.LEAKING_VALVE ? 0.13 : 0;
    }

    int runs(int usual) {
        return trouble == Trouble.HURRY ? 2 : trouble == Trouble.COLD_START ? 4 : usual;
    }
}
