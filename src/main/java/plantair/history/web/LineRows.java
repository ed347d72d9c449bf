package plantair.history.web;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import plantair.history.web.ChartView.LineRow;
import plantair.history.web.ChartView.Shown;
import plantair.quantity.FlowRate;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;
import plantair.trend.Crossing;
import plantair.trend.Level;
import plantair.trend.Limits;
import plantair.trend.OutputTrend;
import plantair.trend.StepVerdict;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/**
 * The line of a machine as rows: a few days of each piece between two steps, and where a decline is signalled a few days
 * beyond the last test.
 *
 * @param history of the machine
 * @param limits the forecast ends where it reaches the last of them
 * @param units of the reader
 */
record LineRows(MachineHistory history, Limits limits, UnitSet units) {

    private static final int DAYS_A_PIECE = 9;

    List<LineRow> rows() {
        List<LocalDate> days = history.tests().stream()
                .filter(test -> history.point(test).isPresent())
                .map(ResultLine::date)
                .toList();
        if (trend().yearlyChange().isEmpty()) {
            return List.of();
        }
        LocalDate first = days.get(0);
        LocalDate last = days.get(days.size() - 1);
        List<LineRow> rows = new ArrayList<>();
        LocalDate from = first;
        int piece = 1;
        for (LocalDate step : steps(first, last)) {
            add(rows, from, step.minusDays(1), piece++, false);
            from = step;
        }
        add(rows, from, last, piece++, false);
        if (trend().code().isDecline()) {
            add(rows, last, end(first, last), piece, true);
        }
        return rows;
    }

    private OutputTrend trend() {
        return history.trend();
    }

    private List<LocalDate> steps(LocalDate first, LocalDate last) {
        return trend().steps().stream()
                .map(StepVerdict::date)
                .distinct()
                .filter(day -> day.isAfter(first) && !day.isAfter(last))
                .sorted()
                .toList();
    }

    /** The day on which the last limit is reached, at most as long after the last test as the record is. */
    private LocalDate end(LocalDate first, LocalDate last) {
        LocalDate furthest = last.plusDays(ChronoUnit.DAYS.between(first, last));
        return history.crossing(limits.actBelow())
                .map(Crossing::best)
                .filter(day -> day.isAfter(last) && day.isBefore(furthest))
                .orElse(furthest);
    }

    private void add(List<LineRow> rows, LocalDate from, LocalDate to, int piece, boolean forecast) {
        long days = ChronoUnit.DAYS.between(from, to);
        long parts = Math.max(1, Math.min(DAYS_A_PIECE - 1, days));
        LongStream.rangeClosed(0, parts)
                .mapToObj(part -> from.plusDays(days * part / parts))
                .distinct()
                .forEach(day -> trend().at(day)
                        .map(level -> row(day, level, piece, forecast))
                        .ifPresent(rows::add));
    }

    private LineRow row(LocalDate day, Level level, int piece, boolean forecast) {
        double u = level.relativeU();
        return new LineRow(
                day.toString(), piece, forecast, shown(level.flow(), u), shown(level.low(), u), shown(level.high(), u));
    }

    private Shown shown(FlowRate flow, double relativeU) {
        return new Shown(
                QuantityFormat.of(units).flowNumber(flow, relativeU),
                QuantityFormat.working(units).flowNumber(flow));
    }
}
