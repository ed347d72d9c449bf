package plantair.pumpup;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How sure a flow is: named components, each relative and standard (k = 1), combined by root sum of squares since they are
 * independent of each other (GUM 5.1.2).
 *
 * @param components largest first
 */
public record Uncertainty(List<Component> components) {

    /** Where a component comes from. */
    public enum Source {
        /** Size of receivers and pipes. */
        VOLUME,
        /** Gauge error that differs between its marks, at the stop. */
        GAUGE_AT_STOP,
        /** Gauge error that differs between its marks, at the start. */
        GAUGE_AT_START,
        /** Gauge error in proportion to the reading. */
        GAUGE_SPAN,
        /** Gauge error that is the same at every mark. */
        GAUGE_OFFSET,
        /** A gauge of which nothing is known. */
        GAUGE_UNKNOWN,
        /** Reading the needle at the stop. */
        READING_AT_STOP,
        /** Reading the needle at the start. */
        READING_AT_START,
        /** Starting and stopping the clock. */
        CLOCK,
        /** Station pressure. */
        STATION,
        /** Intake temperature. */
        INTAKE_TEMPERATURE,
        /** Intake humidity. */
        HUMIDITY,
        /** Temperature of the receiver air at the start. */
        AIR_AT_START,
        /** Temperature of the receiver air at the stop, or settled. */
        AIR_AT_STOP,
        /** Reading the thermometer from run to run. */
        AIR_READING,
        /** The factor of the lumped model. */
        WARMING_FACTOR,
        /** The air at the start not being as warm as the intake, as it is taken where it was not read. */
        WARMING_START,
        /** Leak of the test volume that was added back. */
        LEAK,
        /** Scatter of the runs beyond what reading and clock explain. */
        RUN_SCATTER,
        /** Valves, drains, warm-up: what differs from one test to the next. */
        OPERATION
    }

    /** What tests with the same error have in common. */
    public enum SharedWith {
        /** The same gauge, and for the errors between marks the same marks. */
        GAUGE,
        /** The same receivers and pipes. */
        VOLUME,
        /** The same thermometer in the same place. */
        THERMOMETER,
        /** The same way of testing the same installation. */
        METHOD
    }

    /**
     * One component.
     *
     * @param source where it comes from
     * @param relative relative standard uncertainty of the flow, 0.01 for 1 %
     * @param sharedWith tests that carry the same error; null when it is new in each test
     */
    public record Component(
            Source source, double relative, @Nullable SharedWith sharedWith) {}

    /** Sorts the components. */
    public Uncertainty {
        components = components.stream()
                .sorted(Comparator.comparingDouble(Component::relative).reversed())
                .toList();
    }

    /** Root sum of squares of the components that are new in each test. */
    public double random() {
        return rootSumSquare(false);
    }

    /** Root sum of squares of the components that tests share. */
    public double shared() {
        return rootSumSquare(true);
    }

    /** Root sum of squares of the components that tests share by one thing. */
    public double sharedWith(SharedWith thing) {
        double sum = 0;
        for (Component component : components) {
            if (component.sharedWith() == thing) {
                sum += component.relative() * component.relative();
            }
        }
        return StrictMath.sqrt(sum);
    }

    /** Both together, for any statement about the absolute flow. */
    public double combined() {
        return StrictMath.hypot(random(), shared());
    }

    private double rootSumSquare(boolean shared) {
        double sum = 0;
        for (Component component : components) {
            if ((component.sharedWith() != null) == shared) {
                sum += component.relative() * component.relative();
            }
        }
        return StrictMath.sqrt(sum);
    }
}
