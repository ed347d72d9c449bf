package plantair.leaktest;

import java.util.List;
import java.util.Optional;
import plantair.leak.Decay;
import plantair.leak.FittedFall;
import plantair.leak.LeakFinding;
import plantair.leak.LoadCycle;
import plantair.leak.LoadShare;
import plantair.leak.ShutAir;
import plantair.leak.TwoReadings;
import plantair.pumpup.Station;
import plantair.pumpup.TimedPressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.supply.Capacity;
import plantair.supply.CapacityPart;

/**
 * What a leak test tells; made from its readings whenever it is looked at.
 *
 * @param station where the test was made
 * @param at gauge pressure for which the leak is told
 * @param loads of load times; empty else
 * @param two of two readings; empty else
 * @param fall of a fall read many times; empty else
 */
public record LeakResult(
        Station station, GaugePressure at, Optional<Loads> loads, Optional<Two> two, Optional<Fall> fall) {

    /**
     * By load times.
     *
     * @param cycles as they were timed
     * @param share loaded, of the whole time
     * @param capacity of the machines that ran; empty where one is not known near the pressure
     */
    public record Loads(List<LoadCycle> cycles, LoadShare share, Optional<Capacity> capacity) {

        Optional<MeasuredFlow> leak() {
            return capacity.map(Capacity::total).map(share::leak);
        }
    }

    /**
     * By two readings.
     *
     * @param readings both
     * @param decay how fast the pressure fell
     * @param shut the volume
     * @param readingU standard uncertainty of one reading, Pa
     */
    public record Two(TwoReadings readings, Decay decay, ShutAir shut, double readingU) {

        /** Mean loss between the readings (S7). */
        public MeasuredFlow meanLoss() {
            return readings.meanLoss(shut, readingU);
        }

        /** By the guide with its factor; empty where that does not apply (S7). */
        public Optional<MeasuredFlow> byGuide() {
            return readings.byGuide(shut, readingU);
        }
    }

    /**
     * By many readings.
     *
     * @param readings as they were typed
     * @param outcome the line through them, or why there is none
     * @param shut the volume
     */
    public record Fall(List<TimedPressure> readings, FittedFall.Outcome outcome, ShutAir shut) {}

    /** What a test tells. */
    public static LeakResult of(LeakTestDraft test) {
        var read = new LeakReadings(test);
        return new LeakResult(
                read.station(),
                read.at(),
                test.kind() == LeakTestKind.LOAD_TIMES ? Optional.of(loads(read)) : Optional.empty(),
                test.kind() == LeakTestKind.TWO_READINGS ? Optional.of(two(read)) : Optional.empty(),
                test.kind() == LeakTestKind.FALL ? Optional.of(fall(read)) : Optional.empty());
    }

    private static Loads loads(LeakReadings read) {
        List<MachineCopy> machines = read.test().machines();
        List<CapacityPart> parts = machines.stream()
                .flatMap(machine -> machine.at(read.at()).stream())
                .toList();
        List<LoadCycle> cycles = read.cycles();
        return new Loads(
                cycles,
                LoadShare.of(cycles),
                parts.size() == machines.size()
                        ? Optional.of(new Capacity(parts, FlowBasis.INTAKE))
                        : Optional.empty());
    }

    private static Two two(LeakReadings read) {
        TwoReadings two = read.two();
        return new Two(two, two.decay(read.readingU()), read.shut(), read.readingU());
    }

    private static Fall fall(LeakReadings read) {
        List<TimedPressure> readings = read.readings();
        double from = read.test().state().leaveEarly() ? FittedFall.SETTLING_S : Double.NEGATIVE_INFINITY;
        return new Fall(readings, FittedFall.of(readings, read.station().pressure(), from), read.shut());
    }

    /** The leak at {@link #at}; empty where the readings do not tell one, or the holes were not choked. */
    public Optional<MeasuredFlow> leak() {
        if (loads.isPresent()) {
            return loads.get().leak();
        }
        if (two.isPresent()) {
            return two.filter(one -> one.readings().isChoked()).map(one -> leak(one.decay(), one.shut()));
        }
        return fall.flatMap(one -> one.outcome().fall().map(fitted -> leak(fitted.decay(), one.shut())));
    }

    private MeasuredFlow leak(Decay decay, ShutAir shut) {
        return decay.leak(shut.volume(), shut.relativeU(), station.pressure(), at);
    }

    /**
     * The leak where it may be reckoned with: that of a fall only when it is nothing but a leak. Too small to be told is a
     * result too; below zero it is none.
     */
    public Optional<MeasuredFlow> counted() {
        return leak().filter(flow -> isLeakAlone())
                .map(flow -> new MeasuredFlow(
                        new FlowRate(Math.max(0, flow.flow().cubicMetresPerSecond())),
                        flow.standardUncertainty(),
                        flow.basis()));
    }

    private boolean isLeakAlone() {
        return !two.map(one -> one.decay().isRise()).orElse(false)
                && !fall.map(one -> one.outcome().findings().stream().anyMatch(LeakResult::isDoubt))
                        .orElse(false);
    }

    private static boolean isDoubt(LeakFinding finding) {
        return switch (finding.code()) {
            case STILL_SETTLING, LEAK_GROWS, ROSE -> true;
            default -> false;
        };
    }
}
