package plantair.runlog.web;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import plantair.pumpup.CarriedFlow;
import plantair.pumpup.CurveBudget;
import plantair.pumpup.CurveFinding;
import plantair.pumpup.FlowAtPressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.Rounded;
import plantair.runlog.RunCurves;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/**
 * Puts curves into words and a person's units. Computes nothing.
 *
 * @param units the person's units
 * @param messages the words
 * @param locale the language
 */
record CurveWords(UnitSet units, MessageSource messages, Locale locale) {

    QuantityFormat format() {
        return QuantityFormat.of(units);
    }

    String say(String key, @Nullable Object... args) {
        return messages.getMessage(key, args, locale);
    }

    String name(RunCurves.Curve curve) {
        return curve.log() == null
                ? say("curve.laps", curve.run())
                : say("curve.log", curve.log().id());
    }

    private String longName(RunCurves.Curve curve) {
        return curve.log() == null
                ? name(curve)
                : say("curve.logNamed", curve.log().id(), curve.log().fileName());
    }

    CurveView.Source source(RunCurves.Curve curve) {
        return new CurveView.Source(
                longName(curve),
                curve.log() == null ? null : curve.log().id(),
                RiseView.of(curve.fill().rise(), format()),
                notes(curve.fill().rise().findings()));
    }

    List<CurveView.Note> notes(List<CurveFinding> findings) {
        return findings.stream()
                .map(finding -> new CurveView.Note(
                        finding.code().name(),
                        finding.code().isStop(),
                        say("curve.finding." + finding.code(), number(finding))))
                .toList();
    }

    private String number(CurveFinding finding) {
        return switch (finding.code()) {
            case NOT_COVERED -> format().difference(new PressureDifference(finding.number()));
            case NEAR_EDGE -> format().percent(finding.number());
            case NOT_RISING, BENDS -> Rounded.places(Math.abs(finding.number()), 1);
            default -> Rounded.places(finding.number(), 0);
        };
    }

    /** What one fill says; the notes of its rise stand beside its name already. */
    CurveView.Line line(RunCurves.Curve curve, FlowAtPressure.Outcome outcome, @Nullable CarriedFlow carried) {
        List<CurveFinding> own = outcome.findings().stream()
                .filter(finding -> !curve.fill().rise().findings().contains(finding))
                .toList();
        if (outcome.flow().isEmpty()) {
            return new CurveView.Line(name(curve), "", "", "", List.of(), "", notes(own));
        }
        FlowAtPressure flow = outcome.flow().get();
        CurveBudget budget = curve.fill().budget(flow);
        double u = budget.combined();
        return new CurveView.Line(
                name(curve),
                say("curve.window", flow.points(), format().gauge(flow.from()), format().gauge(flow.to())),
                format().flow(flow.byHand(), u),
                flow.freeAir() == null ? "" : format().flow(flow.freeAir(), u),
                budget.parts().stream()
                        .map(part -> new CurveView.Part(
                                say("curve.part." + part.source()), format().percent(part.relative())))
                        .toList(),
                carried == null ? "" : format().flow(carried.flow(), carried.relativeU()),
                notes(own));
    }

    String ofRating(CarriedFlow carried) {
        return carried.rating() == null
                ? ""
                : format().percent(carried.rating().ratio(), carried.rating().ratio() * carried.relativeU());
    }

    String verdict(CarriedFlow carried) {
        return carried.verdict() == null
                ? ""
                : say(
                        "curve.verdict." + carried.verdict().verdict(),
                        format().percent(carried.verdict().tolerance()));
    }
}
