package plantair.quantity;

/**
 * Volume flow of air; it travels with a {@link FlowBasis}, without which it says nothing.
 *
 * @param cubicMetresPerSecond m³/s; finite, below zero only in impossible runs
 */
public record FlowRate(double cubicMetresPerSecond) {

    /** @throws IllegalArgumentException when outside the range of the parameter */
    public FlowRate {
        Checks.finite(cubicMetresPerSecond, "cubicMetresPerSecond");
    }

    /** The quantity from a number in a unit. */
    public static FlowRate of(double value, FlowUnit unit) {
        return new FlowRate(unit.toSi(value));
    }

    /**
     * The quantity from a reading as typed.
     *
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public static FlowRate of(Entered entered) {
        return of(entered.value(), entered.unitAs(FlowUnit.class));
    }

    /** The number in this unit. */
    public double in(FlowUnit unit) {
        return unit.fromSi(cubicMetresPerSecond);
    }

    /** A part or a multiple of this flow, such as its uncertainty. */
    public FlowRate times(double factor) {
        return new FlowRate(cubicMetresPerSecond * factor);
    }

    /** The ratio of this flow to another; on one basis, or it says nothing. */
    public double over(FlowRate other) {
        return cubicMetresPerSecond / other.cubicMetresPerSecond;
    }
}
