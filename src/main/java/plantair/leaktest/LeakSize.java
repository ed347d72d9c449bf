package plantair.leaktest;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Station;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.supply.LeakEstimate;
import plantair.supply.SizedBy;

/**
 * How large a leak is thought to be, with what was copied of the site on that day.
 *
 * @param sizeBy how it was estimated; null when nobody did
 * @param flow free air as typed; null for a hole
 * @param bore of a hole; null else
 * @param pressure before it, gauge; null else
 * @param elevation copied from the site
 * @param barometer copied from the site
 */
@Embeddable
public record LeakSize(
        @Enumerated(EnumType.STRING) @Nullable SizedBy sizeBy,
        @Nullable Entered flow,
        @Nullable Entered bore,
        @Nullable Entered pressure,
        @Nullable Entered elevation,
        @Nullable Entered barometer) {

    /**
     * What it is thought to lose; empty when nobody estimated it.
     *
     * @param label how the plant calls it
     */
    public Optional<LeakEstimate> estimate(String label) {
        if (sizeBy == null) {
            return Optional.empty();
        }
        if (flow != null) {
            return Optional.of(new LeakEstimate(label, FlowRate.of(flow), sizeBy));
        }
        return bore == null || pressure == null
                ? Optional.empty()
                : Optional.of(new LeakEstimate(
                        label, LeakEstimate.ofHole(Length.of(bore), GaugePressure.of(pressure), station()), sizeBy));
    }

    /** The station pressure, from what the site says (M3). */
    public AbsolutePressure station() {
        return new Station(
                        null,
                        barometer == null ? null : AbsolutePressure.of(barometer),
                        elevation == null ? null : Length.of(elevation))
                .pressure();
    }
}
