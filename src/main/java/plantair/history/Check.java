package plantair.history;

/**
 * Something to look at when output is down.
 *
 * @param item what
 * @param reason why it is on the list
 */
public record Check(Item item, Reason reason) {

    /** What to look at, the cheapest first. */
    public enum Item {
        /** Water in the receiver. */
        DRAIN,
        /** The gauge of the test. */
        GAUGE,
        /** The isolating valve and all else that shuts the test volume. */
        ISOLATION,
        /** The filter of the intake. */
        FILTER,
        /** The belt, and with it the speed. */
        BELT,
        /** The speed of a drive without a belt. */
        SPEED,
        /** The unloader of a piston machine. */
        UNLOADER,
        /** The valve that throttles the inlet of a rotary machine. */
        INLET_VALVE,
        /** Pressure between the stages. */
        INTERSTAGE,
        /** The valve that keeps a pressure in the oil separator. */
        MINIMUM_PRESSURE_VALVE,
        /** The element of the oil separator. */
        SEPARATOR,
        /** Suction and delivery valves of a piston machine. */
        VALVES,
        /** Piston rings. */
        RINGS,
        /** The airend of a screw machine. */
        AIREND,
        /** The blades of a vane machine. */
        BLADES,
        /** The scrolls and their seals. */
        SCROLLS,
        /** Whatever compresses in a machine of another kind. */
        INSIDE
    }

    /** Why it is on the list. */
    public enum Reason {
        /** The test does not record it. */
        NOT_RECORDED,
        /** The test says that water was left inside. */
        WATER_LEFT,
        /** The gauge was past its date or out of order. */
        GAUGE_PAST_ITS_DATE,
        /** The test names no gauge. */
        GAUGE_NOT_NAMED,
        /** The pressure fell in the static hold. */
        HOLD_FELL,
        /** The pressure rose in the static hold. */
        HOLD_ROSE,
        /** The pressure fell back through the machine's own check valve. */
        CHECK_VALVE_LEAKS,
        /** No static hold was made. */
        HOLD_MISSING,
        /** Another machine was on the receiver. */
        OTHER_MACHINE_ON,
        /** The drive followed the pressure. */
        SPEED_FREE,
        /** Nothing cheaper is left. */
        LAST
    }
}
