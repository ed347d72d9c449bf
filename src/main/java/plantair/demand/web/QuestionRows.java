package plantair.demand.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.demand.SiteBalance;
import plantair.quantity.Rounded;
import plantair.supply.CapacityPart;
import plantair.supply.Margin;
import plantair.supply.Margin.Verdict;
import plantair.supply.SupplyAndDemand;
import plantair.web.Status;
import plantair.web.Status.Kind;

/** The questions about the air of a site with their answers in words. */
@Component
final class QuestionRows {

    private static final double SURE = 0.99;
    private static final double LIKELY = 0.8;

    private static final String PEAK = "peak";

    private final Words words;

    QuestionRows(Words words) {
        this.words = words;
    }

    List<QuestionRow> of(SiteBalance balance, SupplyAndDemand answer, Flows flows) {
        List<QuestionRow> rows = new ArrayList<>();
        String advice = words.say("supply.settle." + answer.leastSure());
        rows.add(row("bare", null, answer.withoutReserve(), advice, flows));
        rows.add(row("reserve", null, answer.withReserve(), advice, flows));
        String largest = answer.capacity().largest().map(CapacityPart::label).orElseThrow();
        rows.add(row("loss", largest, answer.withoutLargest(), advice, flows));
        balance.worn().ifPresent(worn -> rows.add(row("worn", null, worn.withReserve(), advice, flows)));
        rows.add(row(PEAK, null, answer.atPeak(), advice, flows));
        return rows;
    }

    /** Enough, not enough, or cannot be told. */
    Status status(Verdict verdict) {
        Kind kind = switch (verdict) {
            case ENOUGH -> Kind.GOOD;
            case NOT_ENOUGH -> Kind.ALARM;
            case CANNOT_BE_TOLD -> Kind.WATCH;
        };
        return new Status(kind, words.say("supply.verdict." + verdict));
    }

    /** Hardly any plant can feed everything at once: that it cannot is no alarm. */
    private Status expected(Verdict verdict) {
        Status status = status(verdict);
        return verdict == Verdict.NOT_ENOUGH ? new Status(Kind.NONE, status.word()) : status;
    }

    private QuestionRow row(String code, @Nullable String machine, Margin margin, String advice, Flows flows) {
        return new QuestionRow(
                code,
                words.say("supply.question." + code, machine),
                code.equals(PEAK) ? expected(margin.verdict()) : status(margin.verdict()),
                flows.number(margin.supply(), margin.u()),
                flows.number(margin.need(), margin.u()),
                flows.both(margin.margin(), margin.u()),
                Rounded.places(100 * margin.part(), 0) + " %",
                words.say("supply.chance." + band(margin.probability()), percent(margin.probability())),
                settled(margin, advice, flows).orElse(null));
    }

    private Optional<String> settled(Margin margin, String advice, Flows flows) {
        if (margin.verdict() != Verdict.CANNOT_BE_TOLD) {
            return Optional.empty();
        }
        String least = flows.about(margin.settledBy());
        String now = flows.about(margin.u());
        return Optional.of(words.say("supply.settled", least, now, flows.unit(), advice));
    }

    private static String band(double probability) {
        if (probability >= SURE) {
            return "certain";
        }
        if (probability >= LIKELY) {
            return "likely";
        }
        if (probability > 1 - LIKELY) {
            return "open";
        }
        return probability > 1 - SURE ? "unlikely" : "ruledOut";
    }

    private static String percent(double probability) {
        if (probability > SURE) {
            return "> 99 %";
        }
        return probability < 1 - SURE ? "< 1 %" : Rounded.places(100 * probability, 1) + " %";
    }
}
