package plantair.quantity;

/** Units of power for each flow of free air. */
public enum SpecificPowerUnit implements Unit {
    /** 1 kW for each 100 cfm. */
    KW_PER_100_CFM("kW/(100.[cft_i]/min)", "kW per 100 cfm", FlowRate.of(100, FlowUnit.CFM)),

    /** 1 kW for each m³/min. */
    KW_PER_CUBIC_METRE_PER_MINUTE("kW/(m3/min)", "kW per m³/min", FlowRate.of(1, FlowUnit.CUBIC_METRE_PER_MINUTE));

    private final String code;
    private final String symbol;
    private final FlowRate flow;

    SpecificPowerUnit(String code, String symbol, FlowRate flow) {
        this.code = code;
        this.symbol = symbol;
        this.flow = flow;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    /** The flow that the unit is told for. */
    public FlowRate flow() {
        return flow;
    }
}
