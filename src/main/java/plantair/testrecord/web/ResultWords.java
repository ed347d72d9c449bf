package plantair.testrecord.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import plantair.pumpup.Believable;
import plantair.pumpup.Explanations;
import plantair.pumpup.Finding;
import plantair.pumpup.NameplateVerdict;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.RatingComparison;
import plantair.pumpup.RunResult;
import plantair.pumpup.Severity;
import plantair.pumpup.Uncertainty;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.testrecord.FigureText;
import plantair.testrecord.ResultText;
import plantair.testrecord.RunEntry;
import plantair.trend.NewResult;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.UnitSet;

/**
 * Puts a result into words and numbers of a person's units. Computes nothing.
 *
 * @param units the person's units
 * @param messages the words
 * @param locale the language
 */
record ResultWords(UnitSet units, MessageSource messages, Locale locale) {

    QuantityFormat format() {
        return QuantityFormat.of(units);
    }

    String say(String key, @Nullable Object... args) {
        return messages.getMessage(key, args, locale);
    }

    TestView.Headline headline(PumpUpResult result, String ofBaseline, @Nullable Long baselineId, String baselineDate) {
        double u = result.uncertainty().combined();
        RatingComparison rating = result.rating();
        return new TestView.Headline(
                flow(result.freeAir(), u),
                format().gauge(result.midPressure()),
                format().flow(result.handMethod()),
                flow(result.atRatedSpeed(), u),
                rating == null ? "" : format().percent(rating.ratio(), result.ratingUncertainty()),
                rating == null
                        ? ""
                        : say(
                                "test.ratingText",
                                format().flow(rating.expected()),
                                say("basis." + rating.basis()),
                                say("reach." + rating.reach())),
                result.verdict() == null
                        ? ""
                        : say("verdict." + result.verdict().verdict()),
                result.verdict() == null ? "" : verdictNote(result.verdict()),
                believable(result),
                ofBaseline,
                baselineId,
                baselineDate,
                format().percent(result.spread()));
    }

    /** How a test fits those before it. */
    TestView.Fit fit(NewResult judged) {
        Status.Kind kind = switch (judged.code()) {
            case IN_LINE -> Status.Kind.GOOD;
            case WORTH_REPEATING -> Status.Kind.WATCH;
            case OUT_OF_LINE -> Status.Kind.ALARM;
        };
        return new TestView.Fit(
                new Status(kind, say("test.fit." + judged.code())),
                say(
                        "test.fit.says." + judged.code(),
                        format().flow(judged.expected()),
                        format().flow(judged.low()),
                        format().flow(judged.high())));
    }

    private String verdictNote(NameplateVerdict verdict) {
        return say("test.verdict.note", format().percent(verdict.probability()), format().percent(verdict.tolerance()));
    }

    private String believable(PumpUpResult result) {
        return Believable.of(result)
                .map(target ->
                        say("test.explain.text", format().flow(target.flow()), format().percent(target.ofRating())))
                .orElse("");
    }

    /** What would explain a result that is too good or too poor; empty for one that needs no explanation. */
    List<String> explanations(PumpUpReadings readings, PumpUpResult result) {
        var figures = new FigureText(units, format());
        return Believable.of(result)
                .map(target -> Explanations.of(readings, result, target.flow()).stream()
                        .map(cause -> say("cause." + cause.cause(), figures.of(cause.by())))
                        .toList())
                .orElse(List.of());
    }

    private String flow(@Nullable FlowRate flow, double relativeU) {
        return flow == null ? "" : format().flow(flow, relativeU);
    }

    List<TestView.Run> runs(List<RunEntry> typed, PumpUpResult result) {
        return IntStream.range(0, typed.size())
                .mapToObj(i -> run(typed.get(i), result.runs().get(i)))
                .toList();
    }

    private TestView.Run run(RunEntry typed, RunResult result) {
        return new TestView.Run(
                result.run(),
                text(typed.startPressure()),
                text(typed.stopPressure()),
                text(typed.elapsed()),
                text(typed.startAir()),
                text(typed.stopAir()),
                text(typed.settledPressure()),
                text(typed.settledAir()),
                text(typed.settledWait()),
                format().flow(result.handMethod()),
                format().flow(result.freeAir()));
    }

    private static String text(@Nullable Entered entered) {
        return entered == null ? "" : entered.toString();
    }

    List<TestView.Pair> standardFlows(PumpUpResult result) {
        return result.standardFlows().stream()
                .map(standard -> new TestView.Pair(
                        say("basis." + standard.basis()),
                        format().flow(standard.flow(), result.uncertainty().combined())))
                .toList();
    }

    List<TestView.Component> uncertainty(PumpUpResult result) {
        return result.uncertainty().components().stream()
                .map(component -> new TestView.Component(
                        say("source." + component.source()),
                        format().percent(component.relative()),
                        component.relative(),
                        sharedWith(component)))
                .toList();
    }

    private String sharedWith(Uncertainty.Component component) {
        return component.sharedWith() == null ? say("test.random") : say("sharedWith." + component.sharedWith());
    }

    List<TestView.FindingView> findings(PumpUpResult result, ResultText text) {
        return result.findings().stream().map(finding -> finding(finding, text)).toList();
    }

    private TestView.FindingView finding(Finding finding, ResultText text) {
        Severity severity = finding.code().severity();
        return new TestView.FindingView(
                status(Optional.of(severity)), finding.code().name(), text.finding(finding, units, locale));
    }

    /** The worst severity as a state. */
    Status status(Optional<Severity> severity) {
        return severity.map(worst -> new Status(kind(worst), say("severity." + worst)))
                .orElseGet(() -> new Status(Status.Kind.GOOD, say("severity.none")));
    }

    private static Status.Kind kind(Severity severity) {
        return switch (severity) {
            case NOTE -> Status.Kind.NONE;
            case CAUTION -> Status.Kind.WATCH;
            case STOP, HAZARD -> Status.Kind.ALARM;
        };
    }
}
