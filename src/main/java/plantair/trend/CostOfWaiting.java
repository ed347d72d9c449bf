package plantair.trend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Power;

/**
 * What lost output costs in a year while nothing is done (T14, M24). A machine that delivers a part r of its baseline and is
 * loaded h hours a year would have delivered the same air in h r hours: it runs h (1 − r) hours longer. Uncertainties are
 * those of r, to first order; hours, power and tariff are taken as they are. Derivation in docs/method.md.
 *
 * <p>Checked by: CostOfWaitingTests.
 *
 * @param lostPart 1 − r; 0.1 is 10 % of the baseline
 * @param energyPerAir 1/r − 1, by which a volume of air costs more energy at equal power
 * @param hours h (1 − r), hours a year; null when the loaded hours are not known
 * @param kilowattHours P h (1 − r), kWh a year; null when hours or power are not known
 * @param money P h (1 − r) times the tariff, a year; null when one of the three is not known
 */
public record CostOfWaiting(
        Estimate lostPart,
        Estimate energyPerAir,
        @Nullable Estimate hours,
        @Nullable Estimate kilowattHours,
        @Nullable Estimate money) {

    /** One-sided 95 %, as in T12. */
    private static final double FACTOR = 1.645;

    private static final double WATTS_PER_KILOWATT = 1_000;

    /** A number and its standard uncertainty in the same unit. */
    public record Estimate(double value, double standardUncertainty) {

        private Estimate times(double factor) {
            return new Estimate(factor * value, factor * standardUncertainty);
        }
    }

    /** What must be known for a cost in money. */
    public enum Input {
        /** Hours loaded in a year. */
        LOADED_HOURS,
        /** Electric power into the motor. */
        INPUT_POWER,
        /** Money for a kilowatt hour. */
        TARIFF
    }

    /**
     * What is known beside the output.
     *
     * @param loadedHours in a year, with the output as it is now, from 0 to 8784; null when not known
     * @param power electric, measured; null when not known
     * @param tariff money for a kilowatt hour, above zero; null when not known
     */
    public record Inputs(
            @Nullable Double loadedHours,
            @Nullable Power power,
            @Nullable Double tariff) {

        /** Those that are not known. */
        public List<Input> missing() {
            List<Input> missing = new ArrayList<>();
            if (loadedHours == null) {
                missing.add(Input.LOADED_HOURS);
            }
            if (power == null) {
                missing.add(Input.INPUT_POWER);
            }
            if (tariff == null) {
                missing.add(Input.TARIFF);
            }
            return missing;
        }
    }

    /**
     * The cost of the difference to the baseline (T14).
     *
     * @param comparison of the output now, its ratio above zero
     * @return empty when nothing is lost, or less than its uncertainty lets tell (one-sided, 95 %)
     * @throws IllegalArgumentException when the ratio is not above zero
     */
    public static Optional<CostOfWaiting> of(BaselineComparison comparison, Inputs inputs) {
        double r = comparison.ratio();
        double u = comparison.standardUncertainty();
        if (!(r > 0)) {
            throw new IllegalArgumentException("ratio must be positive: " + r);
        }
        if (!(r + FACTOR * u < 1)) {
            return Optional.empty();
        }
        var lost = new Estimate(1 - r, u);
        var hours = inputs.loadedHours() == null ? null : lost.times(inputs.loadedHours());
        var energy = hours == null || inputs.power() == null ? null : hours.times(kilowattHours(inputs.power(), 1));
        var money = energy == null || inputs.tariff() == null ? null : energy.times(inputs.tariff());
        return Optional.of(new CostOfWaiting(lost, new Estimate(1 / r - 1, u / (r * r)), hours, energy, money));
    }

    /** Energy of a power held for some hours, kWh (M24). */
    public static double kilowattHours(Power power, double hours) {
        return power.watts() / WATTS_PER_KILOWATT * hours;
    }
}
