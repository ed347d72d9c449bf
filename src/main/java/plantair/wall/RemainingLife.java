package plantair.wall;

import java.util.OptionalDouble;
import plantair.quantity.Length;

/**
 * How long the wall lasts at the rate of its loss, for an inspector to decide on.
 *
 * <p>W3: life = (t_actual − t_required)/rate, never below zero. W4: the next look is due after half of it or ten years,
 * whichever comes first. With lost = t₀ − t₁ over Y years: ∂life/∂t₁ = Y/lost + (t₁ − t_required) Y/lost²,
 * ∂life/∂t₀ = −(t₁ − t_required) Y/lost².
 *
 * <p>Source: remaining life and the longest interval in the inspection code for pressure vessels of the process industry
 * (API 510, from memory). It binds no plant by itself. Checked by: WallReferenceTests.
 *
 * @param years what is left, zero or more
 * @param u its standard uncertainty, years; empty when the error of an instrument is not known
 */
public record RemainingLife(double years, OptionalDouble u) {

    private static final double HALF = 0.5;
    private static final double LONGEST_YEARS = 10;

    /**
     * What is left after a loss.
     *
     * @param loss that can be told
     * @param required least thickness that the vessel needs there, above zero
     * @throws IllegalArgumentException when no loss can be told, or outside the range
     */
    public static RemainingLife of(WallLoss loss, Length required) {
        if (loss.code() != WallCode.THINNING) {
            throw new IllegalArgumentException("no loss: " + loss.code());
        }
        if (!(required.metres() > 0)) {
            throw new IllegalArgumentException("required must be positive: " + required.metres());
        }
        double margin = loss.later().thickness().metres() - required.metres();
        OptionalDouble first = WallLoss.u(loss.earlier());
        OptionalDouble last = WallLoss.u(loss.later());
        if (margin <= 0 || first.isEmpty() || last.isEmpty()) {
            return new RemainingLife(Math.max(margin, 0) / loss.rate(), OptionalDouble.empty());
        }
        double perLoss = loss.years() / loss.lost();
        double byFirst = margin * perLoss / loss.lost() * first.getAsDouble();
        double byLast = (perLoss + margin * perLoss / loss.lost()) * last.getAsDouble();
        return new RemainingLife(
                margin / loss.rate(), OptionalDouble.of(Math.sqrt(WallLoss.square(byFirst) + WallLoss.square(byLast))));
    }

    /** Half of it, years. */
    public double half() {
        return HALF * years;
    }

    /** Half of it or ten years, whichever is less. */
    public double longestInterval() {
        return Math.min(half(), LONGEST_YEARS);
    }
}
