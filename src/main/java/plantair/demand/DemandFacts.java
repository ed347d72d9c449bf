package plantair.demand;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.register.FactLines;
import plantair.register.Facts;
import plantair.supply.BlastNozzle;

/**
 * What the register says of something that takes air: a flow with its basis, a blast nozzle, or a bore.
 *
 * @param label what and where; once only at a site
 * @param kind what takes the air
 * @param pieces how many of them
 * @param flow of one while it runs; null where a nozzle tells it
 * @param basis what the flow refers to; null without a flow
 * @param stated for which place the flow is stated; null without a flow
 * @param nozzle blast nozzle; null where it is none
 * @param bore of another nozzle; null where it is none
 * @param edge of that nozzle; null where it is none
 * @param pressure at which it takes that air, gauge; null where nobody knows
 * @param leastPressure with less it does not do its work, gauge; null where nobody knows
 * @param useFactor share of the time in which one runs; null for all the time, and for an event
 * @param reserve what is added when sizing; null for what is usual
 * @param uncertainty relative standard uncertainty of the flow of one; null for what is usual
 * @param eventLength how long an event lasts; null where it is none
 * @param eventEvery from the start of one event to the start of the next; null where it is none
 * @param note free text, may be empty
 * @param inService false once it is out of use
 */
@Embeddable
public record DemandFacts(
        String label,
        @Enumerated(EnumType.STRING) DemandKind kind,
        int pieces,
        @Nullable Entered flow,
        @Enumerated(EnumType.STRING) @Nullable FlowBasis basis,
        @Enumerated(EnumType.STRING) @Nullable StatedAt stated,
        @Enumerated(EnumType.STRING) @Nullable BlastNozzle nozzle,
        @Nullable Entered bore,
        @Enumerated(EnumType.STRING) @Nullable NozzleEdge edge,
        @Nullable Entered pressure,
        @Nullable Entered leastPressure,
        @Nullable Entered useFactor,
        @Nullable Entered reserve,
        @Nullable Entered uncertainty,
        @Nullable Entered eventLength,
        @Nullable Entered eventEvery,
        String note,
        boolean inService)
        implements Facts {

    @Override
    public String name() {
        return label;
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("label", label)
                .add("kind", kind)
                .add("how many", pieces)
                .add("air of one", flow)
                .add("basis", basis)
                .add("stated for", stated)
                .add("blast nozzle", nozzle)
                .add("bore", bore)
                .add("edge", edge)
                .add("pressure", pressure)
                .add("least pressure", leastPressure)
                .add("use factor", useFactor)
                .add("reserve", reserve)
                .add("uncertainty", uncertainty)
                .add("event lasts", eventLength)
                .add("event every", eventEvery)
                .add("in service", inService)
                .add("note", note)
                .toString();
    }
}
