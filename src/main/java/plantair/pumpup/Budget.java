package plantair.pumpup;

import static plantair.pumpup.FlowModel.Input.*;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Uncertainty.Component;
import plantair.pumpup.Uncertainty.SharedWith;
import plantair.pumpup.Uncertainty.Source;

/**
 * The uncertainty of the mean flow of a test (M20), by the law of propagation (GUM 5.1.2) at the mean of its runs.
 *
 * <p>The variance of a gauge's limit error e is split in thirds: an offset, a part in proportion to the reading, and a part
 * that differs between marks, each e/3; so the two readings of a run are correlated by 2/3. Where nothing is known of an
 * instrument a default stands in; docs/method.md lists them. They are our own, not from a source.
 *
 * <p>Checked by: BudgetReferenceTests, against two full budgets and a Monte Carlo.
 */
final class Budget {

    static final double UNKNOWN_GAUGE = 0.03;
    static final double UNKNOWN_GAUGE_PA = 12_000;
    private static final double UNKNOWN_READING_U_PA = 3_000;
    private static final double HUMIDITY_U = 0.1;
    private static final double HUMIDITY_ASSUMED_U = 0.5 / StrictMath.sqrt(3);
    private static final double WEATHER_U = 0.02 / StrictMath.sqrt(3);
    private static final double AIR_REPEAT_U_K = 0.3;
    private static final double START_NOT_READ_U_K = 3;
    private static final double OPERATION_U = 0.01;
    private static final double LEAK_U = 0.15;

    private final PumpUpReadings readings;
    private final Instruments instruments;
    private final List<RunResult> runs;
    private final FlowModel model;
    private final double[] at;
    private final List<Component> components = new ArrayList<>();

    private Budget(PumpUpReadings readings, List<RunResult> runs, Compressibility compressibility) {
        this.readings = readings;
        this.instruments = readings.circumstances().instruments();
        this.runs = runs;
        this.at = meanRun(readings, runs);
        this.model = new FlowModel(compressibility, at);
    }

    /** The budget at the mean of some runs. */
    static Budget at(PumpUpReadings readings, List<RunResult> runs, Compressibility compressibility) {
        return new Budget(readings, runs, compressibility);
    }

    /**
     * The uncertainty of the mean of the runs.
     *
     * @param scatter standard deviation of the runs over their mean
     * @param leakPart leak that was added back, as a part of the flow
     */
    Uncertainty ofMean(double scatter, double leakPart) {
        if (model.flow() > 0) {
            volume();
            gauge();
            air();
            intake();
            runToRun(scatter);
            add(Source.LEAK, leakU() * leakPart, null);
            add(Source.OPERATION, OPERATION_U, null);
        }
        return new Uncertainty(components);
    }

    /** Relative standard uncertainty of one run against its neighbours: reading, clock and thermometer. */
    double ofRun() {
        return model.flow() > 0 ? perRun() : 1;
    }

    private void add(Source source, double relative, @Nullable SharedWith sharedWith) {
        if (Math.abs(relative) > 0) {
            components.add(new Component(source, Math.abs(relative), sharedWith));
        }
    }

    private void volume() {
        add(Source.VOLUME, volumeU(readings), SharedWith.VOLUME);
    }

    /** Relative standard uncertainty of the net volume. */
    static double volumeU(PumpUpReadings readings) {
        double net = readings.netVolume().cubicMetres();
        double squares = 0;
        for (VolumePart part : readings.volumeParts()) {
            double u = part.relativeU() * part.volume().cubicMetres() / net;
            squares += u * u;
        }
        return StrictMath.sqrt(squares);
    }

    /** Standard uncertainty of the station pressure, Pa. */
    static double stationU(PumpUpReadings readings) {
        return readings.station().read() != null
                ? readings.circumstances().instruments().barometerU()
                : WEATHER_U * readings.station().pressure().pascals();
    }

    /** Standard uncertainty of the relative humidity. */
    static double humidityU(PumpUpReadings readings) {
        return readings.humidityRead() == null ? HUMIDITY_ASSUMED_U : HUMIDITY_U;
    }

    private void gauge() {
        GaugeAccuracy gauge = instruments.gauge();
        if (gauge == null) {
            double rise = at[STOP.ordinal()] - at[START.ordinal()];
            add(Source.GAUGE_UNKNOWN, Math.max(UNKNOWN_GAUGE, UNKNOWN_GAUGE_PA / rise), SharedWith.GAUGE);
            return;
        }
        double third = gauge.limitPa() / 3;
        double[] both = weights();
        both[START.ordinal()] = 1;
        both[STOP.ordinal()] = 1;
        double[] span = weights();
        span[START.ordinal()] = at[START.ordinal()] / gauge.span().pascals();
        span[STOP.ordinal()] = at[STOP.ordinal()] / gauge.span().pascals();
        add(Source.GAUGE_AT_STOP, third * model.sensitivity(STOP), SharedWith.GAUGE);
        // a vented start is known to be zero: neither an error between marks nor an offset is behind it
        boolean vented = at[START.ordinal()] == 0;
        if (!vented) {
            add(Source.GAUGE_AT_START, third * model.sensitivity(START), SharedWith.GAUGE);
        }
        add(Source.GAUGE_SPAN, third * model.sensitivity(span), SharedWith.GAUGE);
        add(
                Source.GAUGE_OFFSET,
                third * (vented ? model.sensitivity(STOP) : model.sensitivity(both)),
                SharedWith.GAUGE);
    }

    private void air() {
        WarmingFactor warming = runs.get(0).warming();
        if (warming != null) {
            add(Source.WARMING_FACTOR, warming.relativeShared(), SharedWith.METHOD);
            add(Source.WARMING_START, warming.relativeRandom(), null);
            return;
        }
        double u = instruments.thermometerU();
        if (readings.runs().get(0).startAir() != null) {
            add(Source.AIR_AT_START, u * model.sensitivity(START_AIR), SharedWith.THERMOMETER);
        } else {
            add(Source.WARMING_START, START_NOT_READ_U_K * model.sensitivity(START_AIR), null);
        }
        add(Source.AIR_AT_STOP, u * model.sensitivity(STOP_AIR), SharedWith.THERMOMETER);
    }

    private void intake() {
        add(Source.STATION, stationU(readings) * model.sensitivity(STATION), null);
        add(Source.INTAKE_TEMPERATURE, instruments.thermometerU() * model.sensitivity(intakeWeights()), null);
        add(Source.HUMIDITY, humidityU(readings) * model.sensitivity(HUMIDITY), null);
    }

    /** Air that was not measured is taken at the intake temperature, and moves with it. */
    private double[] intakeWeights() {
        double[] weights = weights();
        weights[INTAKE.ordinal()] = 1;
        boolean modelled = runs.get(0).warming() != null;
        weights[START_AIR.ordinal()] = modelled || readings.runs().get(0).startAir() == null ? 1 : 0;
        weights[STOP_AIR.ordinal()] = modelled ? 1 : 0;
        return weights;
    }

    /** Of the leak itself: the rule for a choked hole, and reading a small fall of the needle. */
    private double leakU() {
        StaticHold hold = readings.circumstances().hold();
        if (hold == null) {
            return LEAK_U;
        }
        double fall = Math.abs(hold.start().minus(hold.end()).pascals());
        return fall > 0 ? StrictMath.hypot(LEAK_U, StrictMath.sqrt(2) * readingU() / fall) : LEAK_U;
    }

    private void runToRun(double scatter) {
        double root = StrictMath.sqrt(runs.size());
        add(Source.READING_AT_STOP, readingU() * model.sensitivity(STOP) / root, null);
        add(Source.READING_AT_START, startReadingU() * model.sensitivity(START) / root, null);
        add(Source.CLOCK, instruments.clockU() * model.sensitivity(ELAPSED) / root, null);
        add(Source.AIR_READING, airReading() / root, null);
        double stated = perRun();
        if (scatter > stated) {
            add(Source.RUN_SCATTER, StrictMath.sqrt(scatter * scatter - stated * stated) / root, null);
        }
    }

    private double perRun() {
        double stop = readingU() * model.sensitivity(STOP);
        double start = startReadingU() * model.sensitivity(START);
        double clock = instruments.clockU() * model.sensitivity(ELAPSED);
        double air = airReading();
        return StrictMath.sqrt(stop * stop + start * start + clock * clock + air * air);
    }

    private double readingU() {
        return instruments.gauge() == null
                ? UNKNOWN_READING_U_PA
                : instruments.gauge().readingU();
    }

    private double startReadingU() {
        return at[START.ordinal()] == 0 ? 0 : readingU();
    }

    private double airReading() {
        return runs.get(0).warming() != null
                ? 0
                : AIR_REPEAT_U_K * StrictMath.hypot(model.sensitivity(START_AIR), model.sensitivity(STOP_AIR));
    }

    private static double[] weights() {
        return new double[FlowModel.Input.values().length];
    }

    private static double[] meanRun(PumpUpReadings readings, List<RunResult> runs) {
        Intake intake = readings.intake();
        double[] x = weights();
        x[VOLUME.ordinal()] = readings.netVolume().cubicMetres();
        x[STATION.ordinal()] = intake.station().pascals();
        x[INTAKE.ordinal()] = intake.temperature().kelvin();
        x[HUMIDITY.ordinal()] = intake.humidity().fraction();
        for (RunResult run : runs) {
            x[START.ordinal()] +=
                    run.start().pressure().gaugeAt(intake.station()).pascals() / runs.size();
            x[STOP.ordinal()] += run.stop().pressure().gaugeAt(intake.station()).pascals() / runs.size();
            x[START_AIR.ordinal()] += run.start().temperature().kelvin() / runs.size();
            x[STOP_AIR.ordinal()] += run.stop().temperature().kelvin() / runs.size();
            x[ELAPSED.ordinal()] += readings.runs().get(run.run() - 1).elapsed().seconds() / runs.size();
        }
        return x;
    }
}
