package plantair.runlog.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import plantair.pumpup.CarriedFlow;
import plantair.pumpup.FlowAtPressure;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.RatingPoint;
import plantair.quantity.FlowBasis;
import plantair.quantity.GaugePressure;
import plantair.runlog.RunCurves;
import plantair.runlog.RunCurves.Curve;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.StoredResults;
import plantair.web.UnitSet;

/** Puts together what is said of the flow against pressure of a test. */
@Component
final class CurveViews {

    private static final int ALONG = 9;

    private final RunCurves curves;
    private final StoredResults results;
    private final ResultProjection projection;
    private final MessageSource messages;

    CurveViews(RunCurves curves, StoredResults results, ResultProjection projection, MessageSource messages) {
        this.curves = curves;
        this.results = results;
        this.projection = projection;
        this.messages = messages;
    }

    /** A test with all that is asked of it. */
    private record Asked(PumpUpTest test, PumpUpResult result, List<Curve> curves, CurveWords words) {}

    private Asked ask(PumpUpTest test, UnitSet units, Locale locale) {
        PumpUpResult result = results.findByKeyTestIdAndKeyMethodVersion(test.id(), test.methodVersion())
                .map(projection::result)
                .orElseThrow(() -> new IllegalStateException("test " + test.id() + " has no result yet"));
        return new Asked(test, result, curves.of(test), new CurveWords(units, messages, locale));
    }

    /** For the page of a test: the flow at the pressures of its rating, without a chart. */
    CurveView brief(PumpUpTest test, UnitSet units, Locale locale) {
        return view(ask(test, units, locale), null, false);
    }

    /** For a page of its own, with the pressure that somebody asked for; null when nobody did. */
    CurveView whole(PumpUpTest test, @Nullable GaugePressure asked, UnitSet units, Locale locale) {
        return view(ask(test, units, locale), asked, true);
    }

    private CurveView view(Asked asked, @Nullable GaugePressure at, boolean chart) {
        PumpUpResult result = asked.result;
        CurveWords words = asked.words;
        List<CurveView.Answer> answers = new ArrayList<>();
        if (!asked.curves.isEmpty()) {
            if (at != null) {
                answers.add(answer(asked, at, "", ratings(asked.test)));
            }
            ratings(asked.test)
                    .forEach(point -> answers.add(answer(
                            asked,
                            point.pressure(),
                            words.say(
                                    "curve.rated",
                                    words.format().flow(point.flow()),
                                    words.say("basis." + point.basis())),
                            onBasis(asked.test, point.basis()))));
        }
        return new CurveView(
                result.freeAir() == null
                        ? ""
                        : words.format()
                                .flow(result.freeAir(), result.uncertainty().combined()),
                words.format().gauge(result.midPressure()),
                asked.curves.stream().map(words::source).toList(),
                answers,
                chart ? new CurveCharts(asked.test, result, asked.curves, words).chart(ALONG) : null);
    }

    private List<RatingPoint> ratings(PumpUpTest test) {
        return projection.readings(test).ratingPoints();
    }

    private List<RatingPoint> onBasis(PumpUpTest test, FlowBasis basis) {
        return ratings(test).stream().filter(point -> point.basis() == basis).toList();
    }

    private static CurveView.Answer answer(Asked asked, GaugePressure at, String rated, List<RatingPoint> points) {
        CurveWords words = asked.words;
        List<CurveView.Line> lines = new ArrayList<>();
        List<Told> told = new ArrayList<>();
        for (Curve curve : asked.curves) {
            FlowAtPressure.Outcome outcome = curve.fill().at(at);
            CarriedFlow carried = curve.fill().carried(asked.result, at, points).orElse(null);
            lines.add(words.line(curve, outcome, carried));
            if (carried != null) {
                told.add(new Told(curve, carried));
            }
        }
        Optional<Told> best = told.stream()
                .min(Comparator.comparingDouble(one -> one.carried().relativeU()));
        return new CurveView.Answer(
                words.format().gauge(at),
                rated,
                best.map(one -> words.format().flow(one.carried.flow(), one.carried.relativeU()))
                        .orElse(""),
                best.map(one -> words.name(one.curve)).orElse(""),
                best.map(one -> words.ofRating(one.carried)).orElse(""),
                best.map(one -> words.verdict(one.carried)).orElse(""),
                lines);
    }

    private record Told(Curve curve, CarriedFlow carried) {}
}
