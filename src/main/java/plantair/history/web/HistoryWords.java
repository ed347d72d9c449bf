package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.pumpup.Finding;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.Severity;
import plantair.trend.TrendCode;
import plantair.web.Choices;
import plantair.web.Status;
import plantair.web.Status.Kind;

/** Words and shapes for what a history says. */
@Component
final class HistoryWords {

    private final Choices choices;

    HistoryWords(Choices choices) {
        this.choices = choices;
    }

    Status trend(TrendCode code) {
        Kind kind = code.isDecline() || code == TrendCode.READS_HIGHER ? Kind.WATCH : Kind.NONE;
        return new Status(kind, choices.label("history.trend", code));
    }

    /** The worst finding of a test; without one nothing is said of the machine, so nothing is green. */
    Status worstFinding(PumpUpResult result) {
        List<Finding> findings = result.findings();
        Severity severity =
                findings.isEmpty() ? Severity.NOTE : findings.get(0).code().severity();
        if (severity == Severity.NOTE) {
            return noFinding();
        }
        return new Status(
                severity == Severity.CAUTION ? Kind.WATCH : Kind.ALARM,
                choices.label("history.finding", findings.get(0).code()));
    }

    /** What stands there when there is nothing to say but notes. */
    Status noFinding() {
        return new Status(Kind.NONE, choices.label("history.finding", Severity.NOTE));
    }

    /** Why a test with a flow does not join the trend; null when it does, or has no flow. */
    @Nullable
    String keptFromTrend(PumpUpResult result) {
        return result.findings().stream()
                .map(Finding::code)
                .filter(code -> result.freeAir() != null && code.isKeptFromTrend())
                .findFirst()
                .map(code -> choices.label("history.finding", code))
                .orElse(null);
    }

    String label(String prefix, Enum<?> constant) {
        return choices.label(prefix, constant);
    }
}
