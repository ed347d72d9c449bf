package plantair.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.AirTemperature;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.Rounded;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.testrecord.Lap;
import plantair.testrecord.Laps;
import plantair.testrecord.RunEntry;

/** One run: the tank is filled from below the first mark until past the last, and somebody watches. */
final class RunSimulation {

    /** Of the demo plant, in seconds; a longer one tells nearly the same and is quicker. */
    static final double FINE_STEP = 0.05;

    private static final double HAND_S = 0.2;
    private static final int WAIT_MINUTES = 12;
    private static final double LAP = 5;
    private static final double BELOW_START = 0.97;

    private final double step;
    private final Machine machine;
    private final Gauge gauge;
    private final Weather weather;
    private final Random random;
    private final double leak;
    private final double flow;
    private final double startPa;
    private final double stopPa;
    private final Tank tank;
    private final NavigableMap<Double, Double> passed = new TreeMap<>();

    /**
     * A run that has been seen.
     *
     * @param entry what was written down
     * @param trueFlow what was delivered at the middle of the band, m³/s at the intake
     */
    record Seen(RunEntry entry, double trueFlow) {}

    RunSimulation(
            double step,
            Machine machine,
            Gauge gauge,
            Weather weather,
            double flow,
            double leak,
            double volume,
            Random random) {
        this.step = step;
        this.machine = machine;
        this.gauge = gauge;
        this.weather = weather;
        this.flow = flow;
        this.leak = leak;
        this.random = random;
        startPa = gauge.pascalsAt(machine.start(), random);
        stopPa = gauge.pascalsAt(machine.stop(), random);
        double cool = weather.kelvin() + 1 + random.nextGaussian();
        tank = new Tank(volume, weather, BELOW_START * startPa + weather.pascals(), cool);
    }

    /** @param laps whether every mark of five on the way is timed too */
    Seen watch(boolean laps) {
        fill(startPa);
        passed.clear();
        double startAir = tank.air();
        double seconds = fill(stopPa) + HAND_S * random.nextGaussian();
        double stopAir = tank.air();
        Entered stop = gauge.read(stopPa);
        boolean settles = machine.treatment() == AirTemperature.SETTLED;
        boolean measured = machine.treatment() == AirTemperature.MEASURED;
        if (settles) {
            settle();
        }
        var entry = new RunEntry(
                gauge.mark(machine.start()),
                stop,
                time(seconds),
                measured || settles ? thermometer(startAir) : null,
                measured ? thermometer(stopAir) : null,
                settles ? gauge.read(tank.pressure() - weather.pascals()) : null,
                settles ? thermometer(tank.air()) : null,
                settles ? new Entered(Integer.toString(WAIT_MINUTES), DurationUnit.MINUTE) : null,
                laps ? laps() : null);
        return new Seen(entry, delivered((startPa + stopPa) / 2));
    }

    private double delivered(double gaugePa) {
        double usual = (machine.start() + machine.stop()) / 2;
        double middle = GaugePressure.of(usual, gauge.unit()).pascals();
        return flow * (1 - machine.droop() * (gaugePa - middle));
    }

    /** Fills until a gauge pressure is reached and returns the seconds that took. */
    private double fill(double untilPa) {
        double seconds = 0;
        double before = tank.pressure() - weather.pascals();
        while (true) {
            double dry = delivered(before) * weather.dryDensity();
            double lost = leak * dry * (before + weather.pascals()) / (stopPa + weather.pascals());
            tank.step(step, dry, weather.kelvin() + machine.inletExcess(), lost);
            double after = tank.pressure() - weather.pascals();
            if (after >= untilPa) {
                return seconds + step * (untilPa - before) / (after - before);
            }
            before = after;
            seconds += step;
            passed.put(seconds, after);
        }
    }

    /** The last step before each mark is near enough: it is a twentieth of a second. */
    private Laps laps() {
        List<Lap> laps = new ArrayList<>();
        for (double mark = machine.start() + LAP; mark < machine.stop(); mark += LAP) {
            double pascals = gauge.pascals(mark);
            passed.entrySet().stream()
                    .filter(step -> step.getValue() >= pascals)
                    .findFirst()
                    .ifPresent(step -> laps.add(new Lap(gauge.read(pascals), time(step.getKey()))));
        }
        return new Laps(laps);
    }

    private void settle() {
        for (int i = 0; i < WAIT_MINUTES * 60 / step; i++) {
            tank.step(step, 0, weather.kelvin(), 0);
        }
    }

    private @Nullable Entered thermometer(double kelvin) {
        double shown = kelvin + machine.probeError() + 0.25 * random.nextGaussian();
        return temperature(shown, machine.habits().metric());
    }

    static Entered temperature(double kelvin, boolean metric) {
        TemperatureUnit unit = metric ? TemperatureUnit.CELSIUS : TemperatureUnit.FAHRENHEIT;
        return new Entered(Rounded.places(new Temperature(kelvin).in(unit), metric ? 1 : 0), unit);
    }

    private Entered time(double seconds) {
        double tenths = Math.rint(seconds * 10) / 10;
        if (!machine.habits().colon()) {
            return new Entered(Rounded.places(tenths, 1), DurationUnit.SECOND);
        }
        int minutes = (int) (tenths / 60);
        double rest = tenths - 60 * minutes;
        String text = minutes + ":" + (rest < 9.95 ? "0" : "") + Rounded.places(rest, 1);
        return new Entered(text, DurationUnit.MINUTES_SECONDS);
    }
}
