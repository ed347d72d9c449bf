package plantair.api;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plantair.api.EvaluateRequest.Gauge;
import plantair.api.EvaluateRequest.Hold;
import plantair.api.EvaluateRequest.IntakeAir;
import plantair.api.EvaluateRequest.Motor;
import plantair.api.EvaluateRequest.Run;
import plantair.api.EvaluateRequest.Settled;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.Circumstances;
import plantair.pumpup.GaugeAccuracy;
import plantair.pumpup.Instruments;
import plantair.pumpup.MachineData;
import plantair.pumpup.MotorInput;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.RatingPoint;
import plantair.pumpup.RunReadings;
import plantair.pumpup.StaticHold;
import plantair.pumpup.Station;
import plantair.pumpup.VolumePart;
import plantair.quantity.Power;

/** From a request without problems to what the method takes. Computes nothing. */
final class RequestReadings {

    private RequestReadings() {}

    static PumpUpReadings of(EvaluateRequest request) {
        IntakeAir intake = required(request.intake());
        List<Run> runs = required(request.runs());
        return new PumpUpReadings(
                volumeParts(request),
                new Station(request.barometer(), null, request.elevation()),
                required(intake.temperature()),
                intake.relativeHumidity(),
                airTemperature(runs),
                runs.stream().map(RequestReadings::run).toList(),
                request.speed(),
                request.ratedSpeed(),
                ratings(request.ratingPoints()),
                null,
                circumstances(request));
    }

    static List<VolumePart> volumeParts(EvaluateRequest request) {
        return required(request.volumeParts()).stream()
                .map(part -> new VolumePart(
                        Objects.requireNonNullElse(part.label(), ""),
                        Objects.requireNonNullElse(part.kind(), VolumePart.Kind.RECEIVER),
                        required(part.volume())))
                .toList();
    }

    /** The runs are alike in this, {@link RequestChecks} has seen to it. */
    private static AirTemperature airTemperature(List<Run> runs) {
        Run first = runs.get(0);
        if (first.settled() != null) {
            return AirTemperature.SETTLED;
        }
        return first.startAirTemperature() == null ? AirTemperature.NOT_MEASURED : AirTemperature.MEASURED;
    }

    private static RunReadings run(Run run) {
        Settled settled = run.settled();
        return new RunReadings(
                required(run.start()),
                required(run.stop()),
                required(run.elapsed()),
                run.startAirTemperature(),
                run.stopAirTemperature(),
                settled == null ? null : settled.pressure(),
                settled == null ? null : settled.airTemperature());
    }

    private static List<RatingPoint> ratings(@Nullable List<EvaluateRequest.Rating> sent) {
        List<EvaluateRequest.Rating> points = sent == null ? List.of() : sent;
        return points.stream()
                .map(point ->
                        new RatingPoint(required(point.pressure()), required(point.flow()), required(point.basis())))
                .toList();
    }

    private static Circumstances circumstances(EvaluateRequest request) {
        Motor motor = request.motor();
        var machine = new MachineData(
                request.displacement(),
                motor == null ? null : motor.power(),
                motor == null ? null : shaftPower(motor),
                false,
                null);
        return new Circumstances(instruments(request.gauge()), hold(request.hold()), machine);
    }

    private static Instruments instruments(@Nullable Gauge gauge) {
        Instruments unnamed = Instruments.UNNAMED;
        if (gauge == null) {
            return unnamed;
        }
        var accuracy = new GaugeAccuracy(
                required(gauge.span()), required(gauge.accuracyPercent()) / 100, required(gauge.division()), List.of());
        return new Instruments(accuracy, unnamed.clockU(), unnamed.thermometerU(), unnamed.barometerU());
    }

    private static @Nullable StaticHold hold(@Nullable Hold hold) {
        return hold == null
                ? null
                : new StaticHold(
                        required(hold.start()), required(hold.end()), required(hold.waited()), required(hold.place()));
    }

    private static @Nullable Power shaftPower(Motor motor) {
        if (motor.volts() == null) {
            return null;
        }
        Power input = MotorInput.electrical(
                motor.volts(),
                required(motor.amps()),
                required(motor.phases()).intValue(),
                required(motor.powerFactor()));
        return MotorInput.shaft(input, required(motor.efficiency()));
    }

    private static <T> T required(@Nullable T value) {
        return Objects.requireNonNull(value);
    }
}
