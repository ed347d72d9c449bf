package plantair.history.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.history.web.ChartView.LevelRow;
import plantair.history.web.ChartView.Shown;
import plantair.testrecord.MachineHistory;
import plantair.trend.Crossing;
import plantair.trend.Crossing.Code;
import plantair.trend.Limits;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** The baseline and the limits as flows, and when the line gets there. */
@Component
final class Levels {

    private static final String BASELINE = "BASELINE";

    private final PageWords page;

    Levels(PageWords page) {
        this.page = page;
    }

    List<LevelRow> of(MachineHistory history, Limits limits, UnitSet units) {
        return Stream.of(
                        row(BASELINE, 100, history, units),
                        row("WATCH", limits.watchBelow(), history, units),
                        row("PLAN", limits.planBelow(), history, units),
                        row("ACT", limits.actBelow(), history, units))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<LevelRow> row(String code, int percent, MachineHistory history, UnitSet units) {
        Optional<Crossing> crossing = code.equals(BASELINE) ? Optional.empty() : history.crossing(percent);
        return history.partOfBaseline(percent)
                .map(flow -> new LevelRow(
                        code,
                        page.say("history.level." + code),
                        percent,
                        new Shown(
                                QuantityFormat.of(units).flowNumber(flow),
                                QuantityFormat.working(units).flowNumber(flow)),
                        crossing.map(found -> forecast(found, history)).orElse(null),
                        crossing.filter(found -> isDated(found, history))
                                .map(this::wider)
                                .orElse(null)));
    }

    /** A date is given only where a decline is signalled; a date out of noise would cry wolf. */
    private static boolean isDated(Crossing crossing, MachineHistory history) {
        return crossing.code() == Code.BETWEEN && history.trend().code().isDecline();
    }

    private String forecast(Crossing crossing, MachineHistory history) {
        return page.say(
                "history.forecast." + code(crossing, history),
                PageWords.month(crossing.earliest()),
                PageWords.month(crossing.latest()),
                PageWords.month(crossing.best()));
    }

    private static String code(Crossing crossing, MachineHistory history) {
        Code code = crossing.code() == Code.BETWEEN && !isDated(crossing, history) ? Code.NOT_BEFORE : crossing.code();
        boolean past = isPast(code == Code.BETWEEN ? crossing.best() : crossing.earliest(), history);
        return code.name() + (past && code != Code.ALREADY_BELOW ? ".past" : "");
    }

    private static boolean isPast(@Nullable LocalDate day, MachineHistory history) {
        return history.last()
                .filter(last -> day != null && !day.isAfter(last.date()))
                .isPresent();
    }

    private String wider(Crossing crossing) {
        return page.say(
                crossing.latest95() == null ? "history.forecast95.open" : "history.forecast95",
                PageWords.month(crossing.earliest95()),
                PageWords.month(crossing.latest95()));
    }
}
