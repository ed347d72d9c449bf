package plantair.vessel.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.vessel.InspectionDraft;
import plantair.vessel.ReliefValve;
import plantair.vessel.ValveTestDraft;
import plantair.vessel.VesselCertificate;
import plantair.vessel.VesselFinding;
import plantair.web.Choices;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.Status.Kind;
import plantair.web.TypedText;
import plantair.web.UnitSet;

/** Safety records in words and a person's units. */
@Component
final class VesselWords {

    private final Choices choices;

    VesselWords(Choices choices) {
        this.choices = choices;
    }

    /** What state a certificate is in. */
    private enum PaperState {
        IN_FORCE,
        EXPIRED,
        NOT_IN_FORCE
    }

    VesselPage.Valve valve(ReliefValve valve, List<VesselPage.Test> tests, UnitSet units) {
        var facts = valve.facts();
        Function<Entered, String> flow = typed -> QuantityFormat.of(units).flow(FlowRate.of(typed));
        return new VesselPage.Valve(
                valve.id(),
                facts.tag(),
                pressure(facts.setPressure(), units),
                TypedText.of(facts.capacity(), units.flow(), flow),
                facts.codeStamp(),
                facts.installedOn(),
                facts.note(),
                facts.inService(),
                tests);
    }

    VesselPage.Test test(ValveTestDraft draft, VesselPage.Recorded recorded, UnitSet units) {
        var passed = draft.passed() ? ValveTestForm.Passed.YES : ValveTestForm.Passed.NO;
        return new VesselPage.Test(
                draft.doneOn(),
                choices.label("valveTest.method", draft.method()),
                pressure(draft.poppedAt(), units),
                new Status(draft.passed() ? Kind.GOOD : Kind.ALARM, choices.label("valveTest.passed", passed)),
                draft.doneBy(),
                draft.note(),
                recorded);
    }

    VesselPage.Paper paper(VesselCertificate paper, LocalDate today, UnitSet units) {
        var facts = paper.facts();
        PaperState state = !facts.inForce()
                ? PaperState.NOT_IN_FORCE
                : facts.isExpired(today) ? PaperState.EXPIRED : PaperState.IN_FORCE;
        Kind kind = switch (state) {
            case IN_FORCE -> Kind.GOOD;
            case EXPIRED -> Kind.ALARM;
            case NOT_IN_FORCE -> Kind.NONE;
        };
        return new VesselPage.Paper(
                paper.id(),
                facts.number(),
                facts.issuedBy(),
                facts.issuedOn(),
                pressure(facts.permitted(), units),
                facts.validTo(),
                facts.note(),
                new Status(kind, choices.label("certificate.state", state)));
    }

    VesselPage.Look look(InspectionDraft draft, VesselPage.Recorded recorded, UnitSet units) {
        var report = draft.report();
        return new VesselPage.Look(
                choices.label("inspection.kind", report.kind()),
                report.doneOn(),
                report.inspector(),
                report.employer(),
                report.findings(),
                pressure(report.reducedMawp(), units),
                report.nextDue(),
                report.instrument(),
                Objects.toString(report.accuracy(), null),
                draft.readings().size(),
                recorded);
    }

    VesselPage.Damage damage(VesselFinding finding, @Nullable VesselFinding cleared) {
        return new VesselPage.Damage(
                finding.id(),
                finding.foundOn(),
                choices.label("finding.kind", finding.kind()),
                finding.note(),
                finding.recordedBy(),
                cleared == null
                        ? null
                        : new VesselPage.Cleared(cleared.foundOn(), cleared.note(), cleared.recordedBy()));
    }

    private static @Nullable String pressure(@Nullable Entered typed, UnitSet units) {
        return TypedText.of(
                typed, units.pressure(), entered -> QuantityFormat.of(units).gauge(GaugePressure.of(entered)));
    }
}
