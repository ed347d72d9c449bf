package plantair.api;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.ResultText;
import plantair.web.UnitSet;
import tools.jackson.databind.JsonNode;

/** Evaluates a request by the method for new tests. Stores nothing. */
@Component
final class Evaluation {

    private final ResultText text;
    private final MessageSource messages;

    Evaluation(ResultText text, MessageSource messages) {
        this.text = text;
        this.messages = messages;
    }

    /**
     * An answer, or what is wrong.
     *
     * @param answer empty when something is wrong
     * @param problems empty when nothing is
     */
    record Outcome(Optional<EvaluateAnswer> answer, List<FieldProblem> problems) {}

    Outcome evaluate(JsonNode body, String unitSet, Locale locale) {
        var problems = new Problems(messages, locale);
        if (Stream.of(UnitSet.values()).noneMatch(set -> set.name().equals(unitSet))) {
            problems.add("units", "api.choice", Problems.cut(unitSet), List.of(UnitSet.values()));
        }
        EvaluateRequest request = new RequestReader(problems).read(body, EvaluateRequest.class, "");
        if (request != null) {
            new RequestChecks(problems).check(request);
        }
        if (request == null || !problems.isEmpty()) {
            return new Outcome(Optional.empty(), problems.all());
        }
        Optional<EvaluateAnswer> answer =
                result(request).map(new Answers(UnitSet.byName(unitSet), text, messages, locale)::of);
        if (answer.isEmpty()) {
            problems.add("", "api.notEvaluated");
        }
        return new Outcome(answer, problems.all());
    }

    /** Empty when possible readings together lead to a quantity that its type refuses, or to no finite number. */
    private static Optional<PumpUpResult> result(EvaluateRequest request) {
        try {
            return Optional.of(PumpUpMethods.current().evaluate(RequestReadings.of(request)))
                    .filter(result -> Double.isFinite(result.uncertainty().combined()));
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }
}
