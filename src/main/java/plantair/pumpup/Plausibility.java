package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.UnlikelyReading.Code;
import plantair.pumpup.UnlikelyReading.Reading;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Temperature;

/** Looks for slips of unit, scale and place. All limits are our own, wide enough to let true readings pass. */
public final class Plausibility {

    private static final double BAR_PER_PSI = 14.5;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double SLIP_WIDTH = 1.35;
    private static final double UNUSUAL_PRESSURE = 2.5;
    private static final double UNUSUAL_TIME = 4;
    private static final double BAND_MOVED = 0.15;
    private static final double COLDEST_INTAKE_K = 248;
    private static final double HOTTEST_INTAKE_K = 325;
    private static final double COLDEST_RECEIVER_K = 258;
    private static final double HOTTEST_RECEIVER_K = 353;
    private static final double FAR_FROM_INTAKE_K = 45;

    private final PumpUpReadings readings;
    private final Usual usual;
    private final List<UnlikelyReading> found = new ArrayList<>();
    private boolean intakeLooksRight;

    private Plausibility(PumpUpReadings readings, Usual usual) {
        this.readings = readings;
        this.usual = usual;
    }

    /** Every reading that looks like a slip, in the order of the form. */
    public static List<UnlikelyReading> check(PumpUpReadings readings, Usual usual) {
        var check = new Plausibility(readings, usual);
        check.barometer();
        check.intakeLooksRight = check.temperature(
                Reading.INTAKE_TEMPERATURE, 0, readings.intakeTemperature(), COLDEST_INTAKE_K, HOTTEST_INTAKE_K);
        check.band();
        for (int i = 0; i < readings.runs().size(); i++) {
            check.run(i + 1, readings.runs().get(i));
        }
        return List.copyOf(check.found);
    }

    private void add(Reading reading, int run, Code code, Figure... figures) {
        found.add(new UnlikelyReading(reading, run, code, List.of(figures)));
    }

    private void barometer() {
        Station station = readings.station();
        if (station.isSuspect()) {
            add(
                    Reading.BAROMETER,
                    0,
                    Code.BAROMETER_SUSPECT,
                    Figure.of("Pa", station.pressure()),
                    Figure.of("usual", station.expected()));
        }
    }

    /** Other marks than last time make a step that looks like wear. */
    private void band() {
        Usual.Band last = usual.band();
        RunReadings run = readings.runs().get(0);
        if (last == null || usual.stop() == null) {
            return;
        }
        double width = last.stop().minus(last.start()).pascals();
        double moved = Math.max(
                Math.abs(run.start().minus(last.start()).pascals()),
                Math.abs(run.stop().minus(last.stop()).pascals()));
        boolean slip = isAbout(run.stop().pascals() / usual.stop().pascals(), BAR_PER_PSI);
        if (moved > BAND_MOVED * width && !slip) {
            add(
                    Reading.START_PRESSURE,
                    1,
                    Code.BAND_CHANGED,
                    Figure.of("p1", run.start()),
                    Figure.of("p2", run.stop()),
                    Figure.of("last p1", last.start()),
                    Figure.of("last p2", last.stop()));
        }
    }

    private void run(int number, RunReadings run) {
        boolean pressureLooksRight = pressure(number, run);
        if (pressureLooksRight) {
            time(number, run);
        }
        settled(number, run);
        air(Reading.START_AIR, number, run.startAir());
        air(Reading.STOP_AIR, number, run.stopAir());
        air(Reading.SETTLED_AIR, number, run.settledAir());
    }

    private boolean pressure(int number, RunReadings run) {
        GaugePressure limit = readings.allowablePressure();
        GaugePressure stop = usual.stop();
        double ratio = stop == null ? 1 : run.stop().pascals() / stop.pascals();
        if (stop != null && isAbout(ratio, BAR_PER_PSI)) {
            add(
                    Reading.STOP_PRESSURE,
                    number,
                    Code.BAR_PSI_SLIP,
                    Figure.of("p2", run.stop()),
                    Figure.of("usual", stop));
            return false;
        }
        if (limit != null && run.stop().pascals() > limit.pascals()) {
            add(Reading.STOP_PRESSURE, number, Code.ABOVE_MAWP, Figure.of("p2", run.stop()), Figure.of("MAWP", limit));
        } else if (stop != null && isFar(ratio, UNUSUAL_PRESSURE)) {
            add(
                    Reading.STOP_PRESSURE,
                    number,
                    Code.PRESSURE_UNUSUAL,
                    Figure.of("p2", run.stop()),
                    Figure.of("usual", stop));
        }
        return true;
    }

    private void time(int number, RunReadings run) {
        FlowRate flow = usual.flow();
        if (flow == null) {
            return;
        }
        var rise = run.stop().minus(run.start());
        var expected = new Elapsed(readings.netVolume().cubicMetres()
                * rise.pascals()
                / (readings.station().pressure().pascals() * flow.cubicMetresPerSecond()));
        double ratio = run.elapsed().seconds() / expected.seconds();
        boolean slip = isAbout(ratio, SECONDS_PER_MINUTE);
        if (slip || isFar(ratio, UNUSUAL_TIME)) {
            Code code = slip ? Code.MINUTES_SECONDS_SLIP : Code.TIME_UNUSUAL;
            add(Reading.ELAPSED, number, code, Figure.of("t", run.elapsed()), Figure.of("expected", expected));
        }
    }

    private void settled(int number, RunReadings run) {
        GaugePressure settled = run.settled();
        if (settled != null && settled.pascals() > run.stop().pascals()) {
            add(
                    Reading.SETTLED_PRESSURE,
                    number,
                    Code.SETTLED_ABOVE_STOP,
                    Figure.of("ps", settled),
                    Figure.of("p2", run.stop()));
        }
    }

    private void air(Reading reading, int run, @Nullable Temperature air) {
        if (air == null) {
            return;
        }
        boolean likely = temperature(reading, run, air, COLDEST_RECEIVER_K, HOTTEST_RECEIVER_K);
        double difference = air.kelvin() - readings.intakeTemperature().kelvin();
        if (likely && intakeLooksRight && Math.abs(difference) > FAR_FROM_INTAKE_K) {
            add(
                    reading,
                    run,
                    Code.AIR_FAR_FROM_INTAKE,
                    Figure.of("T", air),
                    Figure.of("Ta", readings.intakeTemperature()));
        }
    }

    private boolean temperature(Reading reading, int run, Temperature read, double coldest, double hottest) {
        boolean likely = read.kelvin() >= coldest && read.kelvin() <= hottest;
        if (!likely) {
            add(
                    reading,
                    run,
                    Code.TEMPERATURE_UNUSUAL,
                    Figure.of("T", read),
                    Figure.of("coldest", new Temperature(coldest)),
                    Figure.of("hottest", new Temperature(hottest)));
        }
        return likely;
    }

    /** True when the ratio is near the factor or near its inverse. */
    private static boolean isAbout(double ratio, double factor) {
        double times = ratio < 1 ? 1 / ratio : ratio;
        return times > factor / SLIP_WIDTH && times < factor * SLIP_WIDTH;
    }

    private static boolean isFar(double ratio, double limit) {
        return !(ratio < limit && ratio > 1 / limit);
    }
}
