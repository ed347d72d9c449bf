package plantair.pumpup;

import java.util.List;

/**
 * A reading that may be true but looks like a slip; the tester confirms or corrects it.
 *
 * @param reading which one
 * @param run its run, from 1; 0 for a reading of the whole test
 * @param code what it looks like
 * @param figures the reading and what it was compared with
 */
public record UnlikelyReading(Reading reading, int run, Code code, List<Figure> figures) {

    /** The readings that are looked at. */
    public enum Reading {
        /** Pressure at the start of the clock. */
        START_PRESSURE,
        /** Pressure at the stop of the clock. */
        STOP_PRESSURE,
        /** Elapsed time. */
        ELAPSED,
        /** Intake temperature. */
        INTAKE_TEMPERATURE,
        /** Receiver air at the start. */
        START_AIR,
        /** Receiver air at the stop. */
        STOP_AIR,
        /** Pressure after waiting. */
        SETTLED_PRESSURE,
        /** Receiver air after waiting. */
        SETTLED_AIR,
        /** Barometer. */
        BAROMETER
    }

    /** What a reading looks like. */
    public enum Code {
        /** About 14.5 times off the machine's usual pressure: bar and psi mixed up. */
        BAR_PSI_SLIP,
        /** Far from the machine's usual pressure. */
        PRESSURE_UNUSUAL,
        /** About 60 times off the expected time: minutes and seconds mixed up. */
        MINUTES_SECONDS_SLIP,
        /** Far from the expected time. */
        TIME_UNUSUAL,
        /** Outside what such air has: the other scale. */
        TEMPERATURE_UNUSUAL,
        /** Far from the intake: perhaps the discharge pipe, not the air in the receiver. */
        AIR_FAR_FROM_INTAKE,
        /** Further from the site's usual than weather goes: reduced to sea level. */
        BAROMETER_SUSPECT,
        /** The pressure rose while waiting: something else feeds the receiver. */
        SETTLED_ABOVE_STOP,
        /** Other marks than in the last test. */
        BAND_CHANGED,
        /** Above the lowest MAWP. */
        ABOVE_MAWP
    }
}
