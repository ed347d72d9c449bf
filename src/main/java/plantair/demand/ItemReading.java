package plantair.demand;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.MeasuredFlow;
import plantair.supply.BlastNozzle;
import plantair.supply.DemandItem;
import plantair.supply.ItemAir;

/**
 * Turns what was typed about an item into its air at a site.
 *
 * @param station barometric pressure of the site
 * @param choice what the site has chosen
 */
record ItemReading(AbsolutePressure station, SupplyFacts choice) {

    ItemUse use(@Nullable Long id, DemandFacts facts) {
        return new ItemUse(id, facts, item(facts).orElse(null), worn(facts).orElse(null));
    }

    /** Empty where the air cannot be told: beyond the table of nozzles, or where flow is not choked. */
    Optional<DemandItem> item(DemandFacts facts) {
        try {
            return flow(facts).map(flow -> item(facts, flow));
        } catch (IllegalArgumentException notFromAForm) {
            return Optional.empty(); // an import may bring what no form would take
        }
    }

    private Optional<DemandItem> worn(DemandFacts facts) {
        if (facts.nozzle() == null || facts.pressure() == null || item(facts).isEmpty()) {
            return Optional.empty();
        }
        GaugePressure pressure = GaugePressure.of(facts.pressure());
        return facts.nozzle()
                .worn()
                .flatMap(next -> ItemAir.blasting(next, pressure, station))
                .map(flow -> item(facts, flow));
    }

    private Optional<FlowRate> flow(DemandFacts facts) {
        GaugePressure pressure = facts.pressure() == null ? null : GaugePressure.of(facts.pressure());
        if (facts.flow() != null && facts.basis() != null) {
            return typed(FlowRate.of(facts.flow()), facts.basis(), facts.stated(), pressure);
        }
        if (pressure == null) {
            return Optional.empty();
        }
        if (facts.nozzle() != null) {
            return ItemAir.blasting(facts.nozzle(), pressure, station);
        }
        return facts.bore() == null || facts.edge() == null
                ? Optional.empty()
                : ItemAir.throughHole(Length.of(facts.bore()), facts.edge().coefficient(), pressure, station);
    }

    private Optional<FlowRate> typed(
            FlowRate flow, FlowBasis basis, @Nullable StatedAt stated, @Nullable GaugePressure pressure) {
        if (stated != StatedAt.SEA_LEVEL) {
            return Optional.of(ItemAir.here(flow, basis, station));
        }
        return pressure == null ? Optional.empty() : Optional.of(ItemAir.fromSeaLevel(flow, basis, pressure, station));
    }

    private DemandItem item(DemandFacts facts, FlowRate flow) {
        return new DemandItem(
                facts.label(),
                facts.pieces(),
                MeasuredFlow.of(flow, uncertainty(facts), FlowBasis.INTAKE),
                useFactor(facts),
                reserve(facts));
    }

    private static double useFactor(DemandFacts facts) {
        if (facts.eventLength() != null && facts.eventEvery() != null) {
            return ItemAir.share(Elapsed.of(facts.eventLength()), Elapsed.of(facts.eventEvery()));
        }
        return facts.useFactor() == null ? 1 : facts.useFactor().part();
    }

    private double reserve(DemandFacts facts) {
        if (facts.reserve() != null) {
            return facts.reserve().part();
        }
        if (facts.kind() == DemandKind.BLAST_NOZZLE) {
            return BlastNozzle.RESERVE;
        }
        return part(choice.reserve(), 0);
    }

    private double uncertainty(DemandFacts facts) {
        if (facts.uncertainty() != null) {
            return facts.uncertainty().part();
        }
        return part(
                choice.uncertainty(),
                facts.nozzle() != null ? ItemAir.TABLE_U : facts.bore() != null ? ItemAir.HOLE_U : ItemAir.PLATE_U);
    }

    private static double part(@Nullable Entered percent, double otherwise) {
        return percent == null ? otherwise : percent.part();
    }
}
