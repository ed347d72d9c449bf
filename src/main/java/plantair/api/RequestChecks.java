package plantair.api;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.api.EvaluateRequest.Motor;
import plantair.api.EvaluateRequest.Run;
import plantair.api.EvaluateRequest.Settled;
import plantair.pumpup.PumpUpReadings;
import plantair.quantity.GaugePressure;

/** What only two or more fields of a request together can show. A field that could not be read is left out. */
final class RequestChecks {

    private final Problems problems;

    RequestChecks(Problems problems) {
        this.problems = problems;
    }

    void check(EvaluateRequest request) {
        station(request);
        volume(request);
        if (request.runs() != null) {
            runs(request.runs());
        }
        if (request.motor() != null) {
            motor(request.motor());
        }
    }

    private void station(EvaluateRequest request) {
        if (request.barometer() == null && request.elevation() == null) {
            problems.add("barometer", "api.station");
        }
    }

    private void volume(EvaluateRequest request) {
        if (request.volumeParts() == null) {
            return;
        }
        if (request.volumeParts().isEmpty()) {
            problems.add("volumeParts", "api.empty");
        } else if (request.volumeParts().stream().allMatch(part -> part.volume() != null)
                && !PumpUpReadings.holdsAir(RequestReadings.volumeParts(request))) {
            problems.add("volumeParts", "test.drowned");
        }
    }

    private void runs(List<Run> runs) {
        if (runs.isEmpty()) {
            problems.add("runs", "api.empty");
        }
        boolean settled = runs.stream().anyMatch(run -> run.settled() != null);
        boolean read = runs.stream()
                .flatMap(run -> Stream.of(run.startAirTemperature() != null, run.stopAirTemperature() != null))
                .anyMatch(there -> there);
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            String path = "runs[" + i + "].";
            above(path + "stop", run.stop(), run.start(), "test.stopNotAboveStart");
            Settled itsSettled = run.settled();
            if (itsSettled != null) {
                above(path + "settled.pressure", itsSettled.pressure(), run.start(), "test.settledNotAboveStart");
            }
            same(settled, itsSettled, path + "settled");
            same(read && !settled, run.startAirTemperature(), path + "startAirTemperature");
            same(read && !settled, run.stopAirTemperature(), path + "stopAirTemperature");
        }
    }

    private void above(String path, @Nullable GaugePressure upper, @Nullable GaugePressure lower, String code) {
        if (upper != null && lower != null && !(upper.pascals() > lower.pascals())) {
            problems.add(path, code, upper.pascals() / 1000 + " kPa", lower.pascals() / 1000 + " kPa");
        }
    }

    /** The air of all runs is treated alike. */
    private void same(boolean wanted, @Nullable Object reading, String path) {
        if (wanted && reading == null) {
            problems.add(path, "api.airMixed");
        }
    }

    private void motor(Motor motor) {
        if (motor.phases() != null && motor.phases() != 1 && motor.phases() != 3) {
            problems.add("motor.phases", "api.phases");
        }
        boolean measured = Stream.of(
                        motor.volts(), motor.amps(), motor.phases(), motor.powerFactor(), motor.efficiency())
                .anyMatch(Objects::nonNull);
        if (!measured) {
            return;
        }
        whole(motor.volts(), "motor.volts");
        whole(motor.amps(), "motor.amps");
        whole(motor.phases(), "motor.phases");
        whole(motor.powerFactor(), "motor.powerFactor");
        whole(motor.efficiency(), "motor.efficiency");
    }

    private void whole(@Nullable Double reading, String path) {
        if (reading == null) {
            problems.add(path, "api.motor");
        }
    }
}
