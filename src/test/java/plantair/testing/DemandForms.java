package plantair.testing;

/** Forms of supply and demand of site 1 as a browser sends them, sound as they stand. */
public final class DemandForms {

    private static final SentForm ITEM = SentForm.to("/sites/1/demand")
            .with("pieces", "1")
            .with("air.flow", "", "[cft_i]/min")
            .with("air.basis", "UNKNOWN")
            .with("air.stated", "SEA_LEVEL")
            .with("air.nozzle", "")
            .with("air.bore", "", "[in_i]")
            .with("air.edge", "SHARP")
            .with("air.pressure", "", "[psi]")
            .with("eventLength", "", "s")
            .with("eventEvery", "", "min")
            .with("useFactor", "", "%")
            .with("leastPressure", "", "[psi]")
            .with("reserve", "", "%")
            .with("uncertainty", "", "%")
            .with("inService", "true");

    /** A blast nozzle of 5/16 in at 100 psi. */
    public static final SentForm NOZZLE = ITEM.with("label", "Blast room")
            .with("kind", "BLAST_NOZZLE")
            .with("air.nozzle", "NO_5")
            .with("air.pressure", "100", "[psi]");

    /** Three wrenches of 6 cfm by their plate, a fifth of the time. */
    public static final SentForm WRENCHES = ITEM.with("label", "Wrenches")
            .with("kind", "TOOL")
            .with("pieces", "3")
            .with("air.flow", "6", "[cft_i]/min")
            .with("air.pressure", "90", "[psi]")
            .with("useFactor", "20", "%");

    /** A drilled hole of 1/8 in at 60 psi. */
    public static final SentForm BLOW_OFF = ITEM.with("label", "Blow-off")
            .with("kind", "OPEN_NOZZLE")
            .with("air.bore", "0.125", "[in_i]")
            .with("air.pressure", "60", "[psi]");

    /** 100 cfm for 12 s once in 10 min. */
    public static final SentForm FLUSH = ITEM.with("label", "Back-flush")
            .with("kind", "EVENT")
            .with("air.flow", "100", "[cft_i]/min")
            .with("air.basis", "INTAKE")
            .with("air.stated", "HERE")
            .with("eventLength", "12", "s")
            .with("eventEvery", "10", "min");

    /** Supply told at 100 psi, less 12 cfm of leaks known to 10 %. */
    public static final SentForm CHOICE = SentForm.to("/sites/1/supply/choices")
            .with("workingPressure", "100", "[psi]")
            .with("leaksFrom", "TYPED")
            .with("leaks", "12", "[cft_i]/min")
            .with("leaksUncertainty", "10", "%")
            .with("reserve", "", "%")
            .with("uncertainty", "", "%")
            .with("edit.version", "-1")
            .with("edit.reason", "first look");

    private DemandForms() {}
}
