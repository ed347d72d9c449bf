package plantair.pumpup;

import java.util.List;

/**
 * How sure a flow is: named components, each relative and standard (k = 1).
 *
 * @param components random ones are new in each test, shared ones the same in every test with the same source
 */
public record Uncertainty(List<Component> components) {

    /** Where a component comes from. */
    public enum Source {
        /** Reading, clock, weather, valves: what differs from test to test. */
        TEST_TO_TEST,
        /** Size of the receiver. */
        VOLUME,
        /** Error of the gauge. */
        GAUGE,
        /** Reading the temperature of the receiver air. */
        AIR_TEMPERATURE,
        /** The factor of the lumped model. */
        WARMING_FACTOR
    }

    /**
     * One component.
     *
     * @param source where it comes from
     * @param relative relative standard uncertainty of the flow, 0.01 for 1 %
     * @param shared true when all tests with that source carry the same error
     */
    public record Component(Source source, double relative, boolean shared) {}

    /** Copies the list. */
    public Uncertainty {
        components = List.copyOf(components);
    }

    /** Root sum of squares of the random components. */
    public double random() {
        return rootSumSquare(false);
    }

    /** Root sum of squares of the shared components. */
    public double shared() {
        return rootSumSquare(true);
    }

    /** Both together, for any statement about the absolute flow. */
    public double combined() {
        return StrictMath.hypot(random(), shared());
    }

    private double rootSumSquare(boolean shared) {
        return StrictMath.sqrt(components.stream()
                .filter(component -> component.shared() == shared)
                .mapToDouble(component -> component.relative() * component.relative())
                .reduce(0, Double::sum));
    }
}
