package plantair.history.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.history.Machine;
import plantair.history.MachinePage;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.ResultLine;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** From machines to lines of the overview. */
@Component
final class OverviewRows {

    private final HistoryWords words;
    private final Clock clock;

    OverviewRows(HistoryWords words, Clock clock) {
        this.words = words;
        this.clock = clock;
    }

    List<OverviewRow> of(MachinePage page, UnitSet units) {
        QuantityFormat format = QuantityFormat.of(units);
        return page.machines().stream()
                .map(machine -> row(machine, page, format))
                .toList();
    }

    private OverviewRow row(Machine machine, MachinePage page, QuantityFormat format) {
        var plate = machine.facts().plate();
        return new OverviewRow(
                machine.compressor().id(),
                plate.tag(),
                machine.compressor().site().name(),
                words.label("history.kind", plate.kind()),
                machine.isRetired(),
                machine.history()
                        .last()
                        .map(last -> last(machine, last, page.results().get(last.testId()), format))
                        .orElse(null),
                words.trend(machine.history().trend().code()));
    }

    private OverviewRow.LastTest last(Machine machine, ResultLine last, PumpUpResult result, QuantityFormat format) {
        var rating = result.rating();
        return new OverviewRow.LastTest(
                last.testId(),
                last.date().toString(),
                ChronoUnit.DAYS.between(last.date(), LocalDate.now(clock.withZone(last.zoneId()))),
                flow(result, format),
                format.gauge(result.midPressure()),
                rating == null ? null : format.percent(rating.ratio()),
                machine.history()
                        .ofBaseline(last)
                        .map(part -> format.percent(part.ratio(), part.standardUncertainty()))
                        .orElse(null),
                machine.history().isBaseline(last),
                words.keptFromTrend(result),
                words.worstFinding(result));
    }

    private static @Nullable String flow(PumpUpResult result, QuantityFormat format) {
        var freeAir = result.freeAir();
        if (freeAir == null) {
            return null;
        }
        double u = result.uncertainty().combined();
        return format.flowNumber(freeAir, u) + " ± " + format.flowUncertainty(freeAir, u);
    }
}
