package plantair.guided.web;

import java.util.List;

/** What is ticked at the machine, in the order of the work. */
enum Tick {
    /** Receiver, plate and relief valve were looked at. */
    VESSEL_SOUND,
    /** Eye and hearing protection on, guards on. */
    PROTECTED,
    /** Production knows; nobody breathes this air; another machine carries the plant. */
    PLANT_TOLD,
    /** The isolating valve is shut. */
    VALVE_SHUT,
    /** Every other machine on the header is valved off. */
    NEIGHBOURS_SHUT,
    /** Drains, bleeds and purges are shut. */
    DRAINS_SHUT,
    /** The isolating valve was opened slowly and is open. */
    VALVE_OPEN,
    /** Drains are back in automatic. */
    DRAINS_BACK,
    /** Controls, unloader and switch as found. */
    CONTROLS_BACK,
    /** Locks and tags are off. */
    TAGS_OFF,
    /** The pressure of the plant is normal. */
    PRESSURE_NORMAL;

    static final List<Tick> PREPARED = List.of(VESSEL_SOUND, PROTECTED, PLANT_TOLD);
    static final List<Tick> ISOLATED = List.of(VALVE_SHUT, NEIGHBOURS_SHUT, DRAINS_SHUT);
    static final List<Tick> PUT_BACK = List.of(VALVE_OPEN, DRAINS_BACK, CONTROLS_BACK, TAGS_OFF, PRESSURE_NORMAL);
}
