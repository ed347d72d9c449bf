package plantair.pumpup;

import java.util.Arrays;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * The balance M7 as a function of its inputs, for the sensitivities of the budget (M20).
 *
 * <p>Sensitivities are central differences of the method itself, so that they cannot differ from it; they agree with the
 * derivatives written out in docs/method.md. Checked by: FlowModelTests.
 */
final class FlowModel {

    /** The inputs, in the order of the array; SI. */
    enum Input {
        VOLUME(1e-6),
        START(10),
        STOP(10),
        ELAPSED(1e-3),
        STATION(10),
        INTAKE(1e-2),
        HUMIDITY(1e-4),
        START_AIR(1e-2),
        STOP_AIR(1e-2);

        private final double step;

        Input(double step) {
            this.step = step;
        }
    }

    private final Compressibility compressibility;
    private final double[] at;
    private final double flow;

    /** Sensitivities once they were asked for; not a number before. */
    private final double[] known = new double[Input.values().length];

    /** @param at the inputs at which the sensitivities are wanted, in the order of {@link Input} */
    FlowModel(Compressibility compressibility, double[] at) {
        this.compressibility = compressibility;
        this.at = at.clone();
        int humidity = Input.HUMIDITY.ordinal();
        double room = 2 * Input.HUMIDITY.step;
        // dry or wet air cannot become drier or wetter; a difference needs room on both sides
        this.at[humidity] = Math.min(1 - room, Math.max(room, at[humidity]));
        this.flow = flow(this.at);
        Arrays.fill(known, Double.NaN);
    }

    /** The flow at the inputs, m³/s. */
    double flow() {
        return flow;
    }

    /**
     * Relative change of the flow for a change of some inputs together, each by its weight: Σ w ∂ln q/∂x.
     *
     * @param weights change of each input for a unit change
     */
    double sensitivity(double[] weights) {
        double sum = 0;
        for (Input input : Input.values()) {
            double weight = weights[input.ordinal()];
            sum += weight == 0 ? 0 : weight * sensitivity(input);
        }
        return sum;
    }

    /** Relative change of the flow for a change of one input: ∂ln q/∂x. */
    double sensitivity(Input input) {
        int i = input.ordinal();
        if (Double.isNaN(known[i])) {
            double[] x = at.clone();
            x[i] = at[i] + input.step;
            double up = flow(x);
            x[i] = at[i] - input.step;
            known[i] = (up - flow(x)) / (2 * input.step * flow);
        }
        return known[i];
    }

    private double flow(double[] x) {
        var intake = new Intake(
                new AbsolutePressure(x[Input.STATION.ordinal()]),
                new Temperature(x[Input.INTAKE.ordinal()]),
                new RelativeHumidity(x[Input.HUMIDITY.ordinal()]));
        return FreeAir.byBalance(
                        new VesselVolume(x[Input.VOLUME.ordinal()]),
                        new Elapsed(x[Input.ELAPSED.ordinal()]),
                        intake,
                        state(x, Input.START, Input.START_AIR, intake),
                        state(x, Input.STOP, Input.STOP_AIR, intake))
                .cubicMetresPerSecond();
    }

    private ReceiverState state(double[] x, Input pressure, Input air, Intake intake) {
        return ReceiverState.of(
                new GaugePressure(x[pressure.ordinal()]).above(intake.station()),
                new Temperature(x[air.ordinal()]),
                intake,
                compressibility);
    }
}
