package plantair.pumpup;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * Method PU-1: equations M1 to M15, M19 and M20 of docs/method.md.
 *
 * <p>Not in it: the loss over the waiting time of a settled reading.
 *
 * <p>Checked by: PumpUpMethodV1ReferenceTests, PumpUpMethodV1LimitTests, WorkedExampleTests.
 */
final class PumpUpMethodV1 implements PumpUpMethod {

    static final String VERSION = "PU-1";

    private final Compressibility compressibility;

    PumpUpMethodV1(Compressibility compressibility) {
        this.compressibility = compressibility;
    }

    @Override
    public String version() {
        return VERSION;
    }

    @Override
    public PumpUpResult evaluate(PumpUpReadings asRead) {
        PumpUpReadings readings = asRead.corrected();
        GaugePressure mid =
                mean(readings, run -> GaugePressure.mid(run.start(), run.stop()).pascals());
        HoldLeak leak = HoldLeak.of(readings, mid).orElse(null);
        FlowRate added = leak != null && leak.added() ? leak.inRuns() : new FlowRate(0);
        List<RunResult> runs = IntStream.range(0, readings.runs().size())
                .mapToObj(i -> run(i + 1, readings.runs().get(i), readings, added))
                .toList();
        Budget budget = Budget.at(readings, runs, compressibility);
        RunAgreement agreement = RunAgreement.of(runs, budget.ofRun());
        FlowRate freeAir = agreement.averaged() ? new FlowRate(agreement.mean()) : null;
        Double speedRatio = speedRatio(readings);
        FlowRate atRatedSpeed = freeAir == null || speedRatio == null ? null : times(freeAir, speedRatio);
        FlowRate comparable = atRatedSpeed == null ? freeAir : atRatedSpeed;
        RatingComparison rating =
                comparable == null ? null : rating(readings, mid, comparable).orElse(null);
        double leakPart = agreement.mean() > 0 ? added.cubicMetresPerSecond() / agreement.mean() : 0;
        Uncertainty uncertainty = budget.ofMean(agreement.relativeScatter(), leakPart);
        var result = new PumpUpResult(
                VERSION,
                readings.airTemperature(),
                readings.netVolume(),
                mid,
                new PressureDifference(
                        mean(readings, run -> run.stop().minus(run.start()).pascals())
                                .pascals()),
                runs,
                new FlowRate(
                        mean(runs.stream().mapToDouble(run -> run.handMethod().cubicMetresPerSecond()), runs.size())),
                freeAir,
                atRatedSpeed,
                uncertainty,
                agreement.spread(),
                freeAir == null ? List.of() : standardFlows(freeAir, readings.intake()),
                rating,
                rating == null ? null : NameplateVerdict.of(rating, uncertainty),
                leak,
                freeAir == null ? null : efficiency(readings, freeAir, mid),
                List.of(),
                List.of());
        return result.with(ResultFindings.of(readings, result, agreement), Working.of(asRead, readings, result));
    }

    private RunResult run(int number, RunReadings run, PumpUpReadings readings, FlowRate leak) {
        Intake intake = readings.intake();
        VesselVolume volume = readings.netVolume();
        AirTemperature treatment = readings.airTemperature();
        boolean settled = treatment == AirTemperature.SETTLED;
        Temperature startAir = or(treatment == AirTemperature.NOT_MEASURED ? null : run.startAir(), intake);
        Temperature stopAir =
                or(settled ? run.settledAir() : treatment == AirTemperature.MEASURED ? run.stopAir() : null, intake);
        GaugePressure stopPressure = settled && run.settled() != null ? run.settled() : run.stop();
        ReceiverState start = state(run.start(), startAir, intake);
        ReceiverState stop = state(stopPressure, stopAir, intake);
        FlowRate balance = FreeAir.byBalance(volume, run.elapsed(), intake, start, stop);
        WarmingFactor warming = treatment == AirTemperature.NOT_MEASURED ? warming(readings, run) : null;
        FlowRate stored = warming == null ? balance : times(balance, 1 / warming.factor());
        return new RunResult(
                number,
                byHand(run, volume, intake.station()),
                new FlowRate(stored.cubicMetresPerSecond() + leak.cubicMetresPerSecond()),
                start,
                stop,
                warming);
    }

    private static WarmingFactor warming(PumpUpReadings readings, RunReadings run) {
        WarmingFactor modelled = ReceiverWarming.factor(readings.netVolume(), run, readings.intake());
        LearnedFactor learned = readings.circumstances().learnedFactor();
        return learned == null
                ? modelled
                : new WarmingFactor(
                        learned.factor(), learned.relativeU(), modelled.relativeRandom(), modelled.warming());
    }

    private static Efficiency efficiency(PumpUpReadings readings, FlowRate freeAir, GaugePressure mid) {
        AbsolutePressure station = readings.station().pressure();
        return Efficiency.of(
                freeAir, station, mid.above(station), readings.circumstances().machine());
    }

    private static Temperature or(@Nullable Temperature read, Intake intake) {
        return read == null ? intake.temperature() : read;
    }

    private ReceiverState state(GaugePressure pressure, Temperature air, Intake intake) {
        return ReceiverState.of(pressure.above(intake.station()), air, intake, compressibility);
    }

    private static FlowRate byHand(RunReadings run, VesselVolume volume, AbsolutePressure station) {
        Elapsed elapsed = run.elapsed();
        return FreeAir.byHand(volume, run.stop().minus(run.start()), station, elapsed);
    }

    /** N0/N (M14); null when a speed is not known. */
    private static @Nullable Double speedRatio(PumpUpReadings readings) {
        return readings.speed() == null || readings.ratedSpeed() == null
                ? null
                : readings.ratedSpeed().perMinute() / readings.speed().perMinute();
    }

    private static Optional<RatingComparison> rating(PumpUpReadings readings, GaugePressure mid, FlowRate delivered) {
        return RatingComparison.of(
                readings.ratingPoints(),
                mid,
                basis -> basis == FlowBasis.INTAKE ? delivered : FreeAir.standard(delivered, readings.intake(), basis));
    }

    private static List<StandardFlow> standardFlows(FlowRate freeAir, Intake intake) {
        return FlowBasis.standards()
                .map(basis -> new StandardFlow(basis, FreeAir.standard(freeAir, intake, basis)))
                .toList();
    }

    private static GaugePressure mean(PumpUpReadings readings, ToDoubleFunction<RunReadings> pascals) {
        return new GaugePressure(mean(
                readings.runs().stream().mapToDouble(pascals), readings.runs().size()));
    }

    /** Plainly from left to right; how a stream averages depends on the Java version. */
    private static double mean(DoubleStream values, int count) {
        return values.reduce(0, Double::sum) / count;
    }

    private static FlowRate times(FlowRate flow, double factor) {
        return new FlowRate(flow.cubicMetresPerSecond() * factor);
    }
}
