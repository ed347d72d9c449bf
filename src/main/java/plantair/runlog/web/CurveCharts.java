package plantair.runlog.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.CarriedFlow;
import plantair.pumpup.FlowAtPressure;
import plantair.pumpup.PumpUpResult;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.runlog.RunCurves.Curve;
import plantair.testrecord.PumpUpTest;

/**
 * The chart of flow against pressure and its table: the flow of the test carried along each fill; where it cannot be carried, the
 * levels of the fills. Computes nothing.
 */
record CurveCharts(PumpUpTest test, PumpUpResult result, List<Curve> curves, CurveWords words) {

    CurveView.@Nullable Chart chart(int along) {
        List<Point> points = new ArrayList<>();
        for (Curve curve : curves) {
            for (FlowAtPressure flow : curve.fill().along(along)) {
                points.add(new Point(
                        curve,
                        flow,
                        curve.fill().carried(result, flow.at(), List.of()).orElse(null)));
            }
        }
        if (points.isEmpty()) {
            return null;
        }
        boolean carried = points.stream().anyMatch(point -> point.carried != null);
        return new CurveView.Chart(
                carried,
                words.format().gaugeUnit(),
                words.format().flowUnit(),
                points.stream().map(point -> row(point, carried)).toList(),
                marks());
    }

    private record Point(
            Curve curve, FlowAtPressure level, @Nullable CarriedFlow carried) {}

    private CurveView.Row row(Point point, boolean carried) {
        double levelU = point.curve.fill().budget(point.level).combined();
        String level = words.format().flowNumber(point.level.best(), levelU);
        String levelPart = words.format().flowUncertainty(point.level.best(), levelU);
        String flow = carried ? "" : level;
        String u = carried ? "" : levelPart;
        if (point.carried != null) {
            flow = words.format().flowNumber(point.carried.flow(), point.carried.relativeU());
            u = words.format().flowUncertainty(point.carried.flow(), point.carried.relativeU());
        }
        return new CurveView.Row(
                words.name(point.curve), words.format().gaugeNumber(point.level.at()), flow, u, level, levelPart);
    }

    private List<CurveView.Mark> marks() {
        List<CurveView.Mark> marks = new ArrayList<>();
        if (result.freeAir() != null) {
            double u = result.uncertainty().combined();
            marks.add(mark("TEST", result.midPressure(), result.freeAir(), u));
        }
        test.ratings().forEach(rating -> {
            var at = GaugePressure.of(rating.pressure());
            marks.add(
                    rating.basis() == FlowBasis.INTAKE
                            ? mark("RATING", at, FlowRate.of(rating.flow()), 0)
                            : new CurveView.Mark(
                                    "RATING",
                                    words.say("curve.mark.OTHER_BASIS"),
                                    words.format().gaugeNumber(at),
                                    "",
                                    ""));
        });
        return List.copyOf(marks);
    }

    private CurveView.Mark mark(String kind, GaugePressure at, FlowRate flow, double u) {
        return new CurveView.Mark(
                kind,
                words.say("curve.mark." + kind),
                words.format().gaugeNumber(at),
                words.format().flowNumber(flow, u),
                u > 0 ? words.format().flowUncertainty(flow, u) : "");
    }
}
