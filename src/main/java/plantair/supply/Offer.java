package plantair.supply;

import java.util.Optional;
import plantair.pumpup.Efficiency;
import plantair.pumpup.FreeAir;
import plantair.pumpup.Intake;
import plantair.pumpup.SpecificPower;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Power;

/**
 * What a maker offers (S21). A flow at a standard state is turned into air of the intake at which it was stated, since a
 * machine draws in the same volume wherever it stands; power is moved to the intake and the pressure of the site by the
 * isentropic work of M17, its efficiency being taken as the same.
 *
 * <p>Source: own; conversion of flows as in M11. Checked by: OfferTests.
 *
 * @param label whose offer
 * @param flow above zero
 * @param basis what the flow refers to
 * @param stated intake at which flow and power are stated
 * @param pressure discharge pressure at which they are stated, above zero
 * @param input electric power at that point, above zero
 */
public record Offer(String label, FlowRate flow, FlowBasis basis, Intake stated, GaugePressure pressure, Power input) {

    /** @throws IllegalArgumentException when outside the range of a parameter */
    public Offer {
        if (!(flow.cubicMetresPerSecond() > 0 && pressure.pascals() > 0 && input.watts() > 0)) {
            throw new IllegalArgumentException("flow, pressure and power must be positive: " + label);
        }
    }

    /**
     * An offer at the site.
     *
     * @param freeAir at the intake of the site
     * @param standard the same air at ISO 1217's reference, 100 kPa, 20 °C, dry
     * @param power electric, at the pressure of the site
     * @param specificPower power over free air
     * @param moved pressure of the site over that of the offer, absolute; 1 where the power did not have to be moved
     */
    public record AtSite(FlowRate freeAir, FlowRate standard, Power power, SpecificPower specificPower, double moved) {}

    /**
     * The offer at a site.
     *
     * @param site intake there
     * @param at pressure there, above zero
     * @return empty where the flow is a displacement or of no known basis: such offers cannot be compared
     */
    public Optional<AtSite> at(Intake site, GaugePressure at) {
        if (basis != FlowBasis.INTAKE && basis.state().isEmpty()) {
            return Optional.empty();
        }
        FlowRate freeAir = freeAir();
        double there = Efficiency.leastPower(freeAir, site.station(), at.above(site.station()))
                .watts();
        double stand = Efficiency.leastPower(freeAir, stated.station(), pressure.above(stated.station()))
                .watts();
        var power = new Power(input.watts() * there / stand);
        return Optional.of(new AtSite(
                freeAir,
                FreeAir.standard(freeAir, site, FlowBasis.STANDARD_100KPA_20C_DRY),
                power,
                SpecificPower.of(power, freeAir),
                at.above(site.station()).pascals()
                        / pressure.above(stated.station()).pascals()));
    }

    private FlowRate freeAir() {
        return basis == FlowBasis.INTAKE
                ? flow
                : flow.times(
                        1 / FreeAir.standard(new FlowRate(1), stated, basis).cubicMetresPerSecond());
    }
}
