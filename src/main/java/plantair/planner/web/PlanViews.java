package plantair.planner.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import plantair.planner.web.PlanView.Advice;
import plantair.planner.web.PlanView.Gain;
import plantair.planner.web.PlanView.Row;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.GaugeAccuracy;
import plantair.pumpup.PlanRow;
import plantair.pumpup.PlanSetup;
import plantair.pumpup.Recommendation;
import plantair.pumpup.TestPlan;
import plantair.quantity.GaugePressure;
import plantair.quantity.Rounded;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** From a plan to its page. */
@Component
final class PlanViews {

    /** The plan in a person's units; empty when no band lasts a sensible time. */
    Optional<PlanView> of(PlanSetup setup, UnitSet units) {
        var plan = TestPlan.of(setup);
        var format = QuantityFormat.of(units);
        List<Recommendation> recommended = Stream.of(AirTemperature.NOT_MEASURED, AirTemperature.SETTLED)
                .flatMap(air -> plan.recommended(air).stream())
                .toList();
        if (recommended.size() < 2) {
            return Optional.empty();
        }
        Recommendation quick = recommended.get(0);
        Recommendation settled = recommended.get(1);
        return Optional.of(new PlanView(
                format.gauge(setup.stop()),
                format.vessel(setup.volume()),
                plan.rows().stream()
                        .map(row -> row(row, row == quick.row() || row == settled.row(), format))
                        .toList(),
                List.of(
                        advice(AirTemperature.NOT_MEASURED, quick, setup.stop(), format),
                        advice(AirTemperature.SETTLED, settled, setup.stop(), format)),
                gains(setup, plan, plan.rows().indexOf(quick.row()), format)));
    }

    private static Row row(PlanRow row, boolean recommended, QuantityFormat format) {
        return new Row(
                format.gauge(row.start()),
                format.elapsed(row.elapsed()),
                format.percent(row.overstated()),
                format.percent(row.perTest(AirTemperature.NOT_MEASURED)),
                format.percent(row.perTest(AirTemperature.SETTLED)),
                format.percent(row.combined(AirTemperature.NOT_MEASURED)),
                format.percent(row.combined(AirTemperature.SETTLED)),
                recommended);
    }

    private static Advice advice(
            AirTemperature air, Recommendation recommendation, GaugePressure stop, QuantityFormat format) {
        PlanRow row = recommendation.row();
        return new Advice(
                air.name(),
                recommendation.reason().name(),
                List.of(
                        format.gauge(row.start()),
                        format.gauge(stop),
                        format.elapsed(row.elapsed()),
                        format.percent(row.perTest(air)),
                        format.percent(row.combined(air))));
    }

    private static List<Gain> gains(PlanSetup setup, TestPlan plan, int band, QuantityFormat format) {
        List<Gain> gains = new ArrayList<>();
        PlanRow now = plan.rows().get(band);
        String limit = limit(setup.gauge());
        gains.add(gain("AS_PLANNED", limit, now, AirTemperature.NOT_MEASURED, format));
        gains.add(gain("SETTLED", limit, now, AirTemperature.SETTLED, format));
        TestPlan.betterGauge(setup.gauge()).ifPresent(gauge -> {
            PlanRow better = TestPlan.of(setup.with(gauge)).rows().get(band);
            String its = limit(gauge);
            gains.add(gain("GAUGE", its, better, AirTemperature.NOT_MEASURED, format));
            gains.add(gain("BOTH", its, better, AirTemperature.SETTLED, format));
        });
        return gains;
    }

    private static String limit(GaugeAccuracy gauge) {
        return Rounded.significant(100 * gauge.limitPart(), 2) + " %";
    }

    private static Gain gain(String change, String limit, PlanRow row, AirTemperature air, QuantityFormat format) {
        return new Gain(change, limit, format.percent(row.perTest(air)), format.percent(row.combined(air)));
    }
}
