package plantair.leak;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.pumpup.StaticHold;
import plantair.pumpup.TimedPressure;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.statistics.Column;
import plantair.statistics.LeastSquares;

/**
 * A fall of pressure from many readings (S6, S8): ln P = a − k t by ordinary least squares, u(k) from the scatter. A further
 * term in t² tells air that still cools from a leak: more than three times its uncertainty, the fall is no leak alone. Half a
 * kelvin of unseen cooling is in {@link #decay}, not in {@link #scatterU}.
 *
 * <p>Source: own method, docs/supply.md. Checked by: PressureFallReferenceTests, FittedFallTests.
 *
 * @param decay k with all its uncertainty
 * @param scatterU u(k) from the scatter alone, 1/s
 * @param degreesOfFreedom of that
 * @param first fitted pressure at the first reading used
 * @param last fitted pressure at the last reading used
 * @param waited time between these
 * @param readings used
 * @param findings what is odd about them
 */
public record FittedFall(
        Decay decay,
        double scatterU,
        int degreesOfFreedom,
        GaugePressure first,
        GaugePressure last,
        Elapsed waited,
        int readings,
        List<LeakFinding> findings) {

    /** For so long after the stop the air cools too much to be read; our own default, from a simulation. */
    public static final double SETTLING_S = 300;

    private static final int FEWEST = 4;
    private static final double TELLING = 3;

    /** Readings that follow the line to a part in a thousand million bend by rounding only. */
    private static final double EXACT = 1e-9;

    /**
     * The fall, or why there is none.
     *
     * @param fall empty when a finding stops it
     * @param findings all of them
     */
    public record Outcome(Optional<FittedFall> fall, List<LeakFinding> findings) {}

    /**
     * Fits a fall.
     *
     * @param readings in the order in which they were taken
     * @param station barometric pressure of the place
     * @param from earliest time to use, s on the clock of the readings
     */
    public static Outcome of(List<TimedPressure> readings, AbsolutePressure station, double from) {
        List<LeakFinding> findings = new ArrayList<>();
        note(findings, LeakCode.TIME_FALLS, timesBack(readings));
        List<TimedPressure> late =
                readings.stream().filter(reading -> reading.seconds() >= from).toList();
        note(findings, LeakCode.LEFT_EARLY, readings.size() - late.size());
        double lowest = Decay.CHOKED_RATIO * station.pascals();
        List<TimedPressure> used = late.stream()
                .filter(reading -> reading.pressure().pascals() + station.pascals() >= lowest)
                .toList();
        note(findings, LeakCode.LEFT_LOW, late.size() - used.size());
        if (used.size() < FEWEST) {
            findings.add(new LeakFinding(LeakCode.FEW_READINGS, used.size()));
        } else if (used.get(0).seconds() >= used.get(used.size() - 1).seconds()) {
            findings.add(new LeakFinding(LeakCode.NO_TIME, 0));
        }
        if (findings.stream().anyMatch(finding -> finding.code().isStop())) {
            return new Outcome(Optional.empty(), List.copyOf(findings));
        }
        FittedFall fall = fit(used, station, findings);
        return new Outcome(Optional.of(fall), fall.findings());
    }

    private static int timesBack(List<TimedPressure> readings) {
        int back = 0;
        for (int i = 1; i < readings.size(); i++) {
            back += readings.get(i).seconds() < readings.get(i - 1).seconds() ? 1 : 0;
        }
        return back;
    }

    private static void note(List<LeakFinding> findings, LeakCode code, int count) {
        if (count > 0) {
            findings.add(new LeakFinding(code, count));
        }
    }

    private static FittedFall fit(List<TimedPressure> used, AbsolutePressure station, List<LeakFinding> findings) {
        double start = used.get(0).seconds();
        double length = used.get(used.size() - 1).seconds() - start;
        double[] t = used.stream()
                .mapToDouble(one -> (one.seconds() - start) / length - 0.5)
                .toArray();
        double[] logs = used.stream()
                .mapToDouble(one -> StrictMath.log(one.pressure().above(station).pascals()))
                .toArray();
        LeastSquares line = fit(t, logs, 1);
        double scatter = scatter(line);
        double scatterU = scatter * line.uncertainty(1) / length;
        Decay decay = Decay.settled(-line.value(1) / length, scatterU, length);
        findings.addAll(ofFit(decay, scatter > EXACT ? bend(fit(t, logs, 2)) : 0));
        double middle = line.value(0);
        return new FittedFall(
                decay,
                scatterU,
                line.degreesOfFreedom(),
                gauge(middle - line.value(1) / 2, station),
                gauge(middle + line.value(1) / 2, station),
                new Elapsed(length),
                used.size(),
                List.copyOf(findings));
    }

    private static GaugePressure gauge(double log, AbsolutePressure station) {
        return new AbsolutePressure(StrictMath.exp(log)).gaugeAt(station);
    }

    private static LeastSquares fit(double[] t, double[] y, int degree) {
        double[] ones = t.clone();
        double[] squares = t.clone();
        for (int i = 0; i < t.length; i++) {
            ones[i] = 1;
            squares[i] = t[i] * t[i];
        }
        List<Column> line = List.of(Column.free(ones), Column.free(t));
        List<Column> bent = List.of(Column.free(ones), Column.free(t), Column.free(squares));
        return LeastSquares.fit(degree == 1 ? line : bent, y, ones);
    }

    private static double scatter(LeastSquares fit) {
        return StrictMath.sqrt(fit.chiSquare() / fit.degreesOfFreedom());
    }

    private static double bend(LeastSquares bent) {
        double u = scatter(bent) * bent.uncertainty(2);
        return bent.isDetermined(2) && u > 0 ? bent.value(2) / u : 0;
    }

    private static List<LeakFinding> ofFit(Decay decay, double bend) {
        List<LeakFinding> findings = new ArrayList<>();
        if (Math.abs(bend) > TELLING) {
            findings.add(new LeakFinding(bend > 0 ? LeakCode.STILL_SETTLING : LeakCode.LEAK_GROWS, bend));
        }
        if (decay.isRise()) {
            findings.add(new LeakFinding(LeakCode.ROSE, decay.perSecond() / decay.u()));
        } else if (!decay.isTold()) {
            findings.add(new LeakFinding(LeakCode.NO_LEAK_TOLD, decay.perSecond() / decay.u()));
        }
        return findings;
    }

    /** Whether it is a leak and nothing else, as far as the readings tell. */
    public boolean isSound() {
        return decay.isTold()
                && findings.stream()
                        .noneMatch(finding ->
                                finding.code() == LeakCode.STILL_SETTLING || finding.code() == LeakCode.LEAK_GROWS);
    }

    /**
     * The same fall as a hold of the volume of a pump-up test: the method adds its leak to the flow (M10), unless the air goes
     * back through the machine's own check valve. Only for the same shut volume.
     *
     * @param place where the air goes
     * @return empty where the fall is not {@link #isSound sound}
     */
    public Optional<StaticHold> asHold(StaticHold.Place place) {
        return isSound() ? Optional.of(new StaticHold(first, last, waited, place)) : Optional.empty();
    }
}
