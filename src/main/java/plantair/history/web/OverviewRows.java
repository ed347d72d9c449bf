package plantair.history.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.due.DueEntry;
import plantair.due.DueKind;
import plantair.due.DueState;
import plantair.history.MachineLine;
import plantair.history.MachineState;
import plantair.history.MachineStates;
import plantair.history.NextStep;
import plantair.history.StateDetail;
import plantair.history.web.OverviewRow.Compared;
import plantair.pumpup.Severity;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.Status.Kind;
import plantair.web.UnitSet;

/** From machines to lines of the overview. */
@Component
final class OverviewRows {

    private final MachineStates states;
    private final HistoryWords words;
    private final StateWords stateWords;
    private final Clock clock;

    OverviewRows(MachineStates states, HistoryWords words, StateWords stateWords, Clock clock) {
        this.states = states;
        this.words = words;
        this.stateWords = stateWords;
        this.clock = clock;
    }

    List<OverviewRow> of(List<MachineLine> machines, List<DueEntry> due, UnitSet units) {
        QuantityFormat format = QuantityFormat.of(units);
        Map<Long, DueEntry> tests = due.stream()
                .filter(entry -> entry.kind() == DueKind.TEST)
                .collect(Collectors.toMap(DueEntry::objectId, Function.identity()));
        return machines.stream()
                .map(machine -> row(machine, tests.get(machine.compressorId()), format))
                .toList();
    }

    private OverviewRow row(MachineLine machine, @Nullable DueEntry due, QuantityFormat format) {
        MachineState state = machine.state();
        StateDetail detail = state == null ? null : states.detail(state);
        return new OverviewRow(
                machine.compressorId(),
                machine.tag(),
                machine.site(),
                words.label("history.kind", machine.kind()),
                !machine.inService(),
                state == null || detail == null ? null : last(state, detail, format),
                due != null && due.state() == DueState.OVERDUE
                        ? new Status(Kind.ALARM, words.label("history.test", due.state()))
                        : null,
                machine.inService() ? next(state, detail, due) : null);
    }

    private String next(@Nullable MachineState state, @Nullable StateDetail detail, @Nullable DueEntry due) {
        if (state == null || detail == null) {
            return stateWords.first();
        }
        boolean onlyTheNextTest = state.nextStep() == NextStep.NONE && due != null;
        if (onlyTheNextTest && due.due() == null) {
            return stateWords.nothing();
        }
        // the site may have set another interval than a quarter
        LocalDate day = onlyTheNextTest ? due.due() : state.nextStepBy().orElse(null);
        return stateWords.next(state.nextStep(), day, ZoneId.of(detail.zone()));
    }

    private OverviewRow.LastTest last(MachineState state, StateDetail detail, QuantityFormat format) {
        ZoneId zone = ZoneId.of(detail.zone());
        LocalDate date = state.lastAt().atZone(zone).toLocalDate();
        return new OverviewRow.LastTest(
                state.lastTestId(),
                date.toString(),
                ChronoUnit.DAYS.between(date, LocalDate.now(clock.withZone(zone))),
                flow(detail, format),
                format.gauge(new GaugePressure(detail.midPressurePa())),
                grave(state, detail),
                stateWords.standing(state.standing()),
                words.trend(state.trendCode()),
                compared(state, detail, format),
                detail.kept() == null || detail.freeAirM3PerS() == null
                        ? null
                        : words.label("history.finding", detail.kept()),
                detail.dots().isEmpty() ? null : SmallLine.of(detail.dots(), stateWords.told(detail.dots())));
    }

    private static @Nullable String flow(StateDetail detail, QuantityFormat format) {
        if (detail.freeAirM3PerS() == null) {
            return null;
        }
        var freeAir = new FlowRate(detail.freeAirM3PerS());
        double u = detail.relativeCombined();
        return format.flowNumber(freeAir, u) + " ± " + format.flowUncertainty(freeAir, u);
    }

    private @Nullable Status grave(MachineState state, StateDetail detail) {
        boolean grave = state.worstSeverity()
                .filter(severity -> severity.compareTo(Severity.STOP) >= 0)
                .isPresent();
        return grave
                ? new Status(Kind.ALARM, words.label("history.finding", Objects.requireNonNull(detail.worst())))
                : null;
    }

    private static @Nullable Compared compared(MachineState state, StateDetail detail, QuantityFormat format) {
        Long id = detail.comparedId();
        if (id == null) {
            return null;
        }
        return new Compared(
                state.partU().map(u -> format.percent(state.part(), u)).orElse(null),
                detail.baseline(),
                id == state.lastTestId() ? null : String.valueOf(detail.comparedOn()));
    }
}
