package plantair.planner.web;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.equipment.Compressor;
import plantair.equipment.RatingEntry;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.pumpup.VolumePart;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.Rounded;
import plantair.quantity.Unit;
import plantair.testrecord.Histories;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Fills a new plan with what the last test, else the register, leads to expect. */
@Component
final class UsualPlan {

    /** Largest error of a shop gauge, percent of span; common practice, no source. */
    private static final String USUAL_LIMIT = "2";

    private final PumpUpTests tests;
    private final Histories histories;
    private final Receivers receivers;

    UsualPlan(PumpUpTests tests, Histories histories, Receivers receivers) {
        this.tests = tests;
        this.histories = histories;
        this.receivers = receivers;
    }

    void fill(PlanForm form, Compressor compressor, UnitSet units) {
        Optional<PumpUpTest> last = tests.findFirstByCompressorIdOrderByPerformedAtDescIdDesc(compressor.id());
        Optional<RatingEntry> rating = compressor.facts().ratings().stream()
                .filter(entry -> entry.basis() == FlowBasis.INTAKE)
                .findFirst();
        last.ifPresentOrElse(test -> volumes(form, test), () -> onlyReceiver(form, compressor));
        form.setFlow(lastFlow(compressor.id(), units)
                .orElseGet(() -> field(rating.map(RatingEntry::flow).orElse(null), units.flow())));
        Entered stop = last.map(test -> test.runs().get(0).stopPressure())
                .or(() -> rating.map(RatingEntry::pressure))
                .orElse(null);
        form.setStop(field(stop, units.pressure()));
        form.setSpan(number(usualSpan(units), units.pressure()));
        form.setLimit(number(USUAL_LIMIT, FixedUnit.PERCENT));
        form.setDivision(number(usualDivision(units), units.pressure()));
    }

    private static void volumes(PlanForm form, PumpUpTest test) {
        for (var copy : test.volumes()) {
            List<String> chosen = copy.kind() == VolumePart.Kind.RECEIVER ? form.getReceivers() : form.getPipes();
            chosen.add(String.valueOf(copy.sourceId()));
        }
    }

    private void onlyReceiver(PlanForm form, Compressor compressor) {
        List<Receiver> all = receivers.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(
                compressor.site().id());
        if (all.size() == 1) {
            form.getReceivers().add(String.valueOf(all.get(0).id()));
        }
    }

    private Optional<EnteredField> lastFlow(long compressorId, UnitSet units) {
        return histories.of(compressorId).last().flatMap(ResultLine::comparable).map(flow -> flowField(flow, units));
    }

    private static EnteredField flowField(FlowRate flow, UnitSet units) {
        return number(Rounded.significant(flow.in(units.flow()), 3), units.flow());
    }

    private static EnteredField field(@Nullable Entered entered, Unit unit) {
        return EnteredField.of(entered, unit);
    }

    private static EnteredField number(String number, Unit unit) {
        return EnteredField.of(new Entered(number, unit), unit);
    }

    private static String usualSpan(UnitSet units) {
        return switch (units.pressure()) {
            case PSI -> "300";
            case KPA -> "1600";
            default -> "16";
        };
    }

    private static String usualDivision(UnitSet units) {
        return switch (units.pressure()) {
            case PSI -> "2";
            case KPA -> "20";
            default -> "0.2";
        };
    }
}
