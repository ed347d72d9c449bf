package plantair.demand.web;

import org.springframework.stereotype.Component;
import plantair.demand.DemandFacts;
import plantair.demand.StatedAt;
import plantair.quantity.FlowBasis;

/** Says from what the air of an item is told, as it was typed. */
@Component
final class ItemWords {

    private final Words words;

    ItemWords(Words words) {
        this.words = words;
    }

    String typed(DemandFacts facts) {
        String air = air(facts);
        return facts.eventLength() == null
                ? air
                : words.say("demand.air.event", air, facts.eventLength(), facts.eventEvery());
    }

    private String air(DemandFacts facts) {
        if (facts.nozzle() != null) {
            return words.say("demand.air.blast", words.say("demand.nozzle." + facts.nozzle()), facts.pressure());
        }
        if (facts.bore() != null) {
            return words.say(
                    "demand.air.hole", facts.bore(), words.say("demand.edge.short." + facts.edge()), facts.pressure());
        }
        String basis = facts.basis() == FlowBasis.UNKNOWN
                ? words.say("demand.basis.unknown")
                : words.say("basis." + facts.basis());
        if (facts.stated() == StatedAt.SEA_LEVEL) {
            return words.say("demand.air.seaLevel", facts.flow(), basis, facts.pressure());
        }
        return words.say("demand.air.here", facts.flow(), basis);
    }
}
