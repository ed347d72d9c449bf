package plantair.api;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import plantair.api.EvaluateAnswer.Amount;
import plantair.api.EvaluateAnswer.BudgetLine;
import plantair.api.EvaluateAnswer.FindingLine;
import plantair.api.EvaluateAnswer.Flow;
import plantair.api.EvaluateAnswer.WorkingLine;
import plantair.pumpup.Finding;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.RatingComparison;
import plantair.pumpup.Uncertainty.Component;
import plantair.pumpup.WorkingStep;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.testrecord.ResultText;
import plantair.web.UnitSet;

/**
 * Puts a result into an answer.
 *
 * @param units in which units
 * @param text the sentences of findings and working
 * @param messages the words
 * @param locale the language
 */
record Answers(UnitSet units, ResultText text, MessageSource messages, Locale locale) {

    EvaluateAnswer of(PumpUpResult result) {
        double u = result.uncertainty().combined();
        RatingComparison rating = result.rating();
        return new EvaluateAnswer(
                result.methodVersion(),
                result.airTemperature(),
                new Amount(result.netVolume().in(units.vessel()), units.vessel().code()),
                new Amount(
                        result.midPressure().in(units.pressure()),
                        units.pressure().code()),
                flow(result.handMethod(), null, FlowBasis.INTAKE),
                result.freeAir() == null ? null : flow(result.freeAir(), u, FlowBasis.INTAKE),
                result.atRatedSpeed() == null ? null : flow(result.atRatedSpeed(), u, FlowBasis.INTAKE),
                result.standardFlows().stream()
                        .map(standard -> flow(standard.flow(), u, standard.basis()))
                        .toList(),
                rating == null ? null : 100 * rating.ratio(),
                result.uncertainty().components().stream().map(this::line).toList(),
                result.findings().stream().map(this::line).toList(),
                result.working().stream().map(this::line).toList());
    }

    private Flow flow(FlowRate flow, @Nullable Double relativeU, FlowBasis basis) {
        double value = flow.in(units.flow());
        return new Flow(
                value,
                units.flow().code(),
                relativeU == null ? null : Math.abs(flow.times(relativeU).in(units.flow())),
                basis);
    }

    private BudgetLine line(Component component) {
        String source = component.source().name();
        return new BudgetLine(
                messages.getMessage("source." + source, null, locale),
                component.relative(),
                component.sharedWith() == null ? BudgetLine.Kind.RANDOM : BudgetLine.Kind.SHARED,
                component.sharedWith() == null ? null : component.sharedWith().name());
    }

    private FindingLine line(Finding finding) {
        return new FindingLine(finding.code(), finding.code().severity(), text.finding(finding, units, locale));
    }

    private WorkingLine line(WorkingStep step) {
        return new WorkingLine(
                ResultText.equation(step), step.run() == 0 ? null : step.run(), text.working(step, units, locale));
    }
}
