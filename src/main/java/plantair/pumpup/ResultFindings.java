package plantair.pumpup;

import static plantair.pumpup.FindingCode.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;

/** The rules by which PU-1 finds fault with a test. Each rule is a method; limits are our own unless a source is named. */
final class ResultFindings {

    private static final int GOOD_RUNS = 3;
    private static final double SHORT_RUN_S = 30;
    private static final double SCATTER_LIMIT = 0.03;
    private static final double LOW_START_PART = 0.5;
    private static final double ABOVE_RATING_LIMIT = 1.05;
    private static final double TOO_GOOD_LIMIT = 1.1;
    static final double HOLD_LIMIT = 0.01;
    private static final double HAND_DIFFERS_LIMIT = 0.01;

    private final PumpUpReadings readings;
    private final PumpUpResult result;
    private final RunAgreement agreement;
    private final List<Finding> findings = new ArrayList<>();

    private ResultFindings(PumpUpReadings readings, PumpUpResult result, RunAgreement agreement) {
        this.readings = readings;
        this.result = result;
        this.agreement = agreement;
    }

    /** Every finding, worst first. */
    static List<Finding> of(PumpUpReadings readings, PumpUpResult result, RunAgreement agreement) {
        var rules = new ResultFindings(readings, result, agreement);
        rules.pressureLimit();
        rules.runs();
        rules.band();
        rules.air();
        rules.barometer();
        rules.nameplate();
        rules.hold();
        rules.machine();
        rules.findings.sort(
                Comparator.comparing((Finding finding) -> finding.code().severity())
                        .reversed());
        return List.copyOf(rules.findings);
    }

    private void add(FindingCode code, Figure... figures) {
        findings.add(Finding.of(code, figures));
    }

    private void pressureLimit() {
        GaugePressure limit = readings.allowablePressure();
        double highest = readings.runs().stream()
                .mapToDouble(run -> run.stop().pascals())
                .max()
                .orElseThrow();
        if (limit != null && highest > limit.pascals()) {
            add(ABOVE_MAWP, Figure.of("p2", new GaugePressure(highest)), Figure.of("MAWP", limit));
        }
    }

    private void runs() {
        if (!agreement.delivered()) {
            add(NO_DELIVERY);
        } else if (agreement.drifts()) {
            add(RUNS_DRIFT, Figure.percent("spread", result.spread()));
        } else if (result.spread() > SCATTER_LIMIT) {
            add(RUNS_SCATTER, Figure.percent("spread", result.spread()));
        }
        if (readings.runs().size() < GOOD_RUNS) {
            add(FEW_RUNS, Figure.count("n", readings.runs().size()));
        }
        readings.runs().stream()
                .map(RunReadings::elapsed)
                .min(Comparator.comparingDouble(elapsed -> elapsed.seconds()))
                .filter(shortest -> shortest.seconds() < SHORT_RUN_S)
                .ifPresent(shortest -> add(SHORT_RUN, Figure.of("t", shortest)));
    }

    private void band() {
        double start = readings.runs().stream()
                .mapToDouble(run -> run.start().pascals())
                .average()
                .orElseThrow();
        double stop = readings.runs().stream()
                .mapToDouble(run -> run.stop().pascals())
                .average()
                .orElseThrow();
        if (start < LOW_START_PART * stop) {
            add(LOW_START, Figure.of("p1", new GaugePressure(start)), Figure.of("mid", result.midPressure()));
        }
    }

    private void air() {
        FlowRate freeAir = result.freeAir();
        LearnedFactor learned = readings.circumstances().learnedFactor();
        if (readings.airTemperature() == AirTemperature.NOT_MEASURED && learned != null) {
            add(FACTOR_LEARNED, Figure.ratio("F", learned.factor()), Figure.count("n", learned.tests()));
        } else if (readings.airTemperature() == AirTemperature.NOT_MEASURED) {
            add(
                    AIR_NOT_MEASURED,
                    Figure.of("hand", result.handMethod()),
                    Figure.ratio("F", result.runs().get(0).warming().factor()));
        } else if (freeAir != null) {
            double more = result.handMethod().cubicMetresPerSecond() / freeAir.cubicMetresPerSecond() - 1;
            if (Math.abs(more) > HAND_DIFFERS_LIMIT) {
                add(HAND_DIFFERS, Figure.of("hand", result.handMethod()), Figure.percent("more", more));
            }
        }
        if (readings.humidityRead() == null) {
            add(
                    HUMIDITY_ASSUMED,
                    Figure.percent("φ", readings.intake().humidity().fraction()));
        }
    }

    private void barometer() {
        Station station = readings.station();
        Length elevation = station.elevation();
        if (station.isFromElevation() && elevation != null) {
            add(BAROMETER_FROM_ELEVATION, Figure.of("h", elevation), Figure.of("Pa", station.pressure()));
        } else if (station.isSuspect()) {
            add(BAROMETER_SUSPECT, Figure.of("Pa", station.pressure()), Figure.of("usual", station.expected()));
        }
    }

    private void nameplate() {
        if (result.atRatedSpeed() != null) {
            add(SPEED_REFERRED, Figure.of("N", readings.speed()), Figure.of("N0", readings.ratedSpeed()));
        }
        if (readings.ratingPoints().isEmpty()) {
            add(RATING_MISSING);
            return;
        }
        RatingComparison rating = result.rating();
        if (rating == null) {
            if (result.freeAir() != null) {
                add(whyNoRating());
            }
            return;
        }
        switch (rating.reach()) {
            case ONE_POINT -> add(RATING_ONE_POINT, Figure.of("distance", rating.distance()));
            case EXTRAPOLATED -> add(RATING_EXTRAPOLATED, Figure.of("distance", rating.distance()));
            case INTERPOLATED -> {}
        }
        if (rating.ratio() > ABOVE_RATING_LIMIT) {
            FindingCode code = rating.ratio() > TOO_GOOD_LIMIT ? TOO_GOOD : ABOVE_RATING;
            add(code, Figure.percent("ratio", rating.ratio()));
        }
        NameplateVerdict verdict = result.verdict();
        if (verdict != null && verdict.verdict() == NameplateVerdict.Verdict.CANNOT_BE_TOLD) {
            add(
                    VERDICT_OPEN,
                    Figure.percent("probability", verdict.probability()),
                    Figure.percent("u", result.uncertainty().combined()),
                    Figure.percent("settled by", verdict.settledBy()));
        }
    }

    private void hold() {
        HoldLeak leak = result.leak();
        FlowRate freeAir = result.freeAir();
        if (leak == null) {
            add(HOLD_MISSING);
        } else if (freeAir != null) {
            double part = leak.inRuns().cubicMetresPerSecond() / freeAir.cubicMetresPerSecond();
            if (part < -HOLD_LIMIT) {
                add(HOLD_ROSE);
            } else if (part > HOLD_LIMIT) {
                add(
                        leak.added() ? LEAK_ADDED : CHECK_VALVE_LEAKS,
                        Figure.of("at hold", leak.atHold()),
                        Figure.of("in runs", leak.inRuns()));
            }
        }
    }

    private void machine() {
        Efficiency efficiency = result.efficiency();
        if (efficiency != null) {
            volumetric(efficiency);
            power(efficiency);
        }
        Circumstances circumstances = readings.circumstances();
        if (circumstances.instruments().gauge() == null) {
            add(GAUGE_UNKNOWN);
        }
        if (circumstances.machine().speedFree()) {
            add(SPEED_FREE);
        }
        if (Boolean.FALSE.equals(circumstances.machine().othersOff())) {
            add(OTHER_MACHINE_ON);
        }
    }

    private void volumetric(Efficiency efficiency) {
        if (efficiency.volumetric() != null && efficiency.volumetricJudgement() == Judgement.IMPOSSIBLE) {
            add(IMPOSSIBLE_DISPLACEMENT, Figure.percent("volumetric", efficiency.volumetric()));
        }
    }

    private void power(Efficiency efficiency) {
        if (efficiency.isentropic() == null || efficiency.shaftPower() == null) {
            return;
        }
        switch (efficiency.isentropicJudgement()) {
            case IMPOSSIBLE ->
                add(
                        IMPOSSIBLE_POWER,
                        Figure.of("least", efficiency.leastPower()),
                        Figure.of("shaft", efficiency.shaftPower()));
            case UNLIKELY -> add(UNLIKELY_POWER, Figure.percent("isentropic", efficiency.isentropic()));
            case POSSIBLE -> {}
        }
    }

    private FindingCode whyNoRating() {
        List<FlowBasis> bases =
                readings.ratingPoints().stream().map(RatingPoint::basis).toList();
        if (bases.stream().anyMatch(RatingComparison::isComparable)) {
            return RATING_OUT_OF_REACH;
        }
        return bases.contains(FlowBasis.DISPLACEMENT) ? RATING_IS_DISPLACEMENT : RATING_BASIS_UNKNOWN;
    }
}
