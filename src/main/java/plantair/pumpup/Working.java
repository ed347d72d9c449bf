package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FreeAirVolume;
import plantair.quantity.Length;
import plantair.quantity.VesselVolume;

/** Writes down every step of a result with its numbers, so that a hand calculator can follow it. */
final class Working {

    private final PumpUpReadings readings;
    private final PumpUpResult result;
    private final List<WorkingStep> steps = new ArrayList<>();

    private Working(PumpUpReadings readings, PumpUpResult result) {
        this.readings = readings;
        this.result = result;
    }

    static List<WorkingStep> of(PumpUpReadings asRead, PumpUpReadings readings, PumpUpResult result) {
        var working = new Working(readings, result);
        working.corrections(asRead);
        working.common();
        result.runs().forEach(working::run);
        working.whole();
        return List.copyOf(working.steps);
    }

    private void add(String equation, int run, String label, Figure... figures) {
        steps.add(new WorkingStep(equation, run, label, List.of(figures)));
    }

    private void corrections(PumpUpReadings asRead) {
        for (int i = 0; asRead != readings && i < readings.runs().size(); i++) {
            RunReadings read = asRead.runs().get(i);
            RunReadings corrected = readings.runs().get(i);
            add(
                    "M0",
                    0,
                    String.valueOf(i + 1),
                    Figure.of("p1 read", read.start()),
                    Figure.of("p1", corrected.start()),
                    Figure.of("p2 read", read.stop()),
                    Figure.of("p2", corrected.stop()));
        }
    }

    private void common() {
        for (VolumePart part : readings.volumeParts()) {
            String equation = part.kind() == VolumePart.Kind.WATER ? "M2-less" : "M2-part";
            add(equation, 0, part.label(), Figure.of("v", part.volume()));
        }
        add("M2", 0, "", Figure.of("V", result.netVolume()));
        Intake intake = readings.intake();
        Length elevation = readings.station().elevation();
        if (readings.station().isFromElevation() && elevation != null) {
            add("M3", 0, "", Figure.of("h", elevation), Figure.of("Pa", intake.station()));
        } else {
            add("M3-read", 0, "", Figure.of("Pa", intake.station()));
        }
        add(
                "M4",
                0,
                "",
                Figure.of("Ta", intake.temperature()),
                Figure.of("es", SaturationPressure.at(intake.temperature())));
        add(
                "M5",
                0,
                "",
                Figure.ratio("φ", intake.humidity().fraction()),
                Figure.of("es", SaturationPressure.at(intake.temperature())),
                Figure.of("Pa", intake.station()),
                Figure.ratio("x", intake.vapourFraction()),
                Figure.of("dry", new AbsolutePressure(intake.dryPa())));
        hold();
    }

    private void hold() {
        StaticHold hold = readings.circumstances().hold();
        HoldLeak leak = result.leak();
        if (hold == null || leak == null) {
            return;
        }
        AbsolutePressure station = readings.station().pressure();
        add(
                "M10",
                0,
                "",
                Figure.of("P1", hold.start().above(station)),
                Figure.of("P2", hold.end().above(station)),
                Figure.of("t", hold.waited()),
                new Figure("k", Figure.Kind.RATE, leak.perSecond()),
                Figure.of("at hold", leak.atHold()),
                Figure.of("P", result.midPressure().above(station)),
                Figure.of("leak", leak.inRuns()));
    }

    private FlowRate leak() {
        HoldLeak leak = result.leak();
        return leak != null && leak.added() ? leak.inRuns() : new FlowRate(0);
    }

    private static FlowRate less(FlowRate flow, FlowRate other) {
        return new FlowRate(flow.cubicMetresPerSecond() - other.cubicMetresPerSecond());
    }

    private void run(RunResult run) {
        RunReadings read = readings.runs().get(run.run() - 1);
        Intake intake = readings.intake();
        VesselVolume volume = result.netVolume();
        double rise = read.stop().minus(read.start()).pascals();
        add(
                "M1",
                run.run(),
                "",
                Figure.of("V", volume),
                Figure.of("p1", read.start()),
                Figure.of("p2", read.stop()),
                Figure.of("Pa", intake.station()),
                Figure.of("t", read.elapsed()),
                Figure.of(
                        "air",
                        new FreeAirVolume(
                                volume.cubicMetres() * rise / intake.station().pascals())),
                Figure.of("q", run.handMethod()));
        end("M6-start", run.run(), run.start());
        end(readings.airTemperature() == AirTemperature.SETTLED ? "M8-stop" : "M6-stop", run.run(), run.stop());
        balance(run, read, intake);
        FlowRate stored = less(run.freeAir(), leak());
        WarmingFactor warming = run.warming();
        if (warming != null) {
            add(
                    "M9",
                    run.run(),
                    "",
                    Figure.of("q", times(stored, warming.factor())),
                    Figure.ratio("F", warming.factor()),
                    Figure.percent("uF", warming.relativeShared()),
                    Figure.of("free", stored));
        }
        if (leak().cubicMetresPerSecond() > 0) {
            add(
                    "M10-add",
                    run.run(),
                    "",
                    Figure.of("q", stored),
                    Figure.of("leak", leak()),
                    Figure.of("free", run.freeAir()));
        }
    }

    private void end(String equation, int run, ReceiverState state) {
        add(
                equation,
                run,
                "",
                Figure.of("P", state.pressure()),
                Figure.of("T", state.temperature()),
                Figure.of("es", SaturationPressure.at(state.temperature())),
                Figure.of("D", new AbsolutePressure(state.dryPa())),
                Figure.ratio("Z", state.z()),
                new Figure("C", Figure.Kind.CONTENT, state.content()));
    }

    private void balance(RunResult run, RunReadings read, Intake intake) {
        var flow = FreeAir.byBalance(result.netVolume(), read.elapsed(), intake, run.start(), run.stop());
        add(
                "M7",
                run.run(),
                "",
                Figure.of("V", result.netVolume()),
                Figure.of("t", read.elapsed()),
                Figure.of("Ta", intake.temperature()),
                Figure.of("dry", new AbsolutePressure(intake.dryPa())),
                new Figure("C1", Figure.Kind.CONTENT, run.start().content()),
                new Figure("C2", Figure.Kind.CONTENT, run.stop().content()),
                Figure.of("q", flow));
    }

    private void whole() {
        add("M12", 0, "", Figure.of("mid", result.midPressure()));
        if (result.freeAir() == null) {
            return;
        }
        add(
                "M19",
                0,
                "",
                Figure.count("n", result.runs().size()),
                Figure.percent("spread", result.spread()),
                Figure.of("q", result.freeAir()));
        if (result.atRatedSpeed() != null && readings.speed() != null && readings.ratedSpeed() != null) {
            add(
                    "M14",
                    0,
                    "",
                    Figure.of("q", result.freeAir()),
                    Figure.of("N0", readings.ratedSpeed()),
                    Figure.of("N", readings.speed()),
                    Figure.of("q0", result.atRatedSpeed()));
        }
        for (StandardFlow standard : result.standardFlows()) {
            standard(standard);
        }
        RatingComparison rating = result.rating();
        if (rating != null) {
            for (RatingPoint point : RatingComparison.onBasis(readings.ratingPoints(), rating.basis())) {
                add(
                        "M13-point",
                        0,
                        rating.basis().name(),
                        Figure.of("p", point.pressure()),
                        Figure.of("rated", point.flow()));
            }
            add(
                    "M13",
                    0,
                    rating.basis().name(),
                    Figure.of("mid", result.midPressure()),
                    Figure.of("measured", rating.measured()),
                    Figure.of("expected", rating.expected()),
                    Figure.percent("ratio", rating.ratio()));
        }
        efficiency();
        NameplateVerdict verdict = result.verdict();
        if (verdict != null) {
            add(
                    "M15",
                    0,
                    "",
                    Figure.percent("ratio", rating.ratio()),
                    Figure.percent("u", result.uncertainty().combined() * rating.ratio()),
                    Figure.percent("limit", 1 - verdict.tolerance()),
                    Figure.percent("probability", verdict.probability()));
        }
    }

    private void efficiency() {
        Efficiency efficiency = result.efficiency();
        if (efficiency == null) {
            return;
        }
        if (efficiency.volumetric() != null) {
            add(
                    "M16",
                    0,
                    "",
                    Figure.of("q", result.freeAir()),
                    Figure.of("swept", readings.circumstances().machine().displacement()),
                    Figure.percent("volumetric", efficiency.volumetric()));
        }
        if (efficiency.isentropic() != null) {
            AbsolutePressure station = readings.station().pressure();
            add(
                    "M17",
                    0,
                    "",
                    Figure.of("q", result.freeAir()),
                    Figure.of("Pa", station),
                    Figure.of("P", result.midPressure().above(station)),
                    Figure.of("W", efficiency.leastPower()),
                    Figure.of("shaft", efficiency.shaftPower()),
                    Figure.percent("isentropic", efficiency.isentropic()));
        }
    }

    private void standard(StandardFlow standard) {
        FlowBasis basis = standard.basis();
        var state = basis.state().orElseThrow();
        Intake reference = new Intake(state.pressure(), state.temperature(), state.humidity());
        add(
                "M11",
                0,
                basis.name(),
                Figure.of("q", result.freeAir()),
                Figure.of("dry", new AbsolutePressure(readings.intake().dryPa())),
                Figure.of("refDry", new AbsolutePressure(reference.dryPa())),
                Figure.of("Tref", state.temperature()),
                Figure.of("Ta", readings.intake().temperature()),
                Figure.of("standard", standard.flow()));
    }

    private static FlowRate times(FlowRate flow, double factor) {
        return new FlowRate(flow.cubicMetresPerSecond() * factor);
    }
}
