package plantair.cost.web;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import plantair.cost.CostedMachine;
import plantair.cost.PowerText;
import plantair.cost.web.CostView.Cause;
import plantair.cost.web.CostView.Fact;
import plantair.cost.web.CostView.Missing;
import plantair.quantity.Rounded;
import plantair.quantity.SpecificPowerUnit;
import plantair.web.UnitSet;
import plantair.web.Words;

/** From what is to be reckoned to its page. */
@Component
final class AirCostViews {

    private static final String ENERGY_UNIT = "kWh";

    CostView of(CostQuestion question, long siteId, List<CostedMachine> machines, UnitSet units) {
        var leaks = new LeakCosts(question, siteId, units);
        List<Cause> causes = new ArrayList<>();
        leaks.cause().ifPresent(causes::add);
        machines.forEach(machine -> causes.add(LostOutput.of(machine, question)));
        return new CostView(
                leaks.lead(),
                facts(question, machines, unit(units)),
                causes,
                question.tariff() == null ? ENERGY_UNIT : question.currency(),
                leaks.repairs(),
                leaks.idle(machines),
                leaks.working(),
                missing(question, siteId, machines));
    }

    /** The unit of specific power in which a person thinks. */
    static SpecificPowerUnit unit(UnitSet units) {
        return units == UnitSet.US ? SpecificPowerUnit.KW_PER_100_CFM : SpecificPowerUnit.KW_PER_CUBIC_METRE_PER_MINUTE;
    }

    private static List<Fact> facts(CostQuestion question, List<CostedMachine> machines, SpecificPowerUnit unit) {
        List<Fact> facts = new ArrayList<>();
        var specific = question.specific();
        if (specific != null) {
            String measured = String.join(
                    ", ",
                    machines.stream()
                            .filter(machine -> machine.power().isPresent())
                            .map(CostedMachine::tag)
                            .toList());
            facts.add(new Fact(
                    "cost.specific",
                    PowerText.text(specific.value(), specific.relativeU(), unit),
                    question.specificTyped() ? Words.of("cost.typed") : Words.of("cost.specific.measured", measured)));
        }
        facts.add(new Fact(
                "cost.hours",
                Rounded.places(question.hours(), 0) + " h",
                Words.of(question.hoursTyped() ? "cost.typed" : "cost.hours.all")));
        if (question.tariff() != null) {
            facts.add(new Fact(
                    "cost.tariff",
                    Rounded.significant(question.tariff(), 3) + " " + question.currency(),
                    Words.of(question.tariffTyped() ? "cost.typed" : "cost.tariff.site")));
        }
        return facts;
    }

    private static List<Missing> missing(CostQuestion question, long siteId, List<CostedMachine> machines) {
        List<Missing> missing = new ArrayList<>();
        if (question.leak() == null) {
            missing.add(new Missing(Words.of("cost.missing.leak"), "/sites/" + siteId + "/leak-tests", false));
        }
        if (question.tariff() == null) {
            missing.add(new Missing(Words.of("cost.missing.tariff"), "/sites/" + siteId + "/edit", true));
        }
        for (CostedMachine machine : machines) {
            long id = machine.compressor().id();
            if (machine.power().isEmpty()) {
                missing.add(new Missing(
                        Words.of("cost.missing.power", machine.tag()), "/tests/new?compressor=" + id, false));
            }
            if (machine.waiting().inputs().loadedHours() == null) {
                missing.add(new Missing(
                        Words.of("cost.missing.hours", machine.tag()), "/compressors/" + id + "/edit", true));
            }
        }
        return missing;
    }
}
