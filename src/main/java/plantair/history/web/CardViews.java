package plantair.history.web;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.history.PassByCard;
import plantair.history.web.CardView.Face;
import plantair.history.web.CardView.Step;
import plantair.instrument.InstrumentKind;
import plantair.quantity.Elapsed;
import plantair.quantity.Rounded;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.RunEntry;
import plantair.testrecord.VolumeCopy;
import plantair.trend.PassByTime;
import plantair.trend.Standing;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.UnitSet;

/** From the card of a machine to its text. */
@Component
final class CardViews {

    private static final int WARMER_K = 5;

    private final HistoryWords words;

    CardViews(HistoryWords words) {
        this.words = words;
    }

    CardView of(PassByCard card, UnitSet units) {
        var compressor = card.compressor();
        return new CardView(
                compressor.id(),
                compressor.tag(),
                compressor.site().name(),
                card.obstacle() == null
                        ? null
                        : "history.card.obstacle." + card.obstacle().name(),
                card.gaugeChanged(),
                face(card, QuantityFormat.of(units)));
    }

    private @Nullable Face face(PassByCard card, QuantityFormat format) {
        PumpUpTest test = card.baseline();
        PassByTime times = card.times();
        if (test == null || times == null) {
            return null;
        }
        RunEntry run = test.runs().get(0);
        var conditions = test.conditions();
        return new Face(
                run.startPressure().toString(),
                run.stopPressure().toString(),
                gauge(test),
                card.volumes().stream().map(CardViews::volume).collect(Collectors.joining(", ")),
                format.elapsed(times.baseline()),
                steps(card, times),
                Rounded.places(100 * WARMER_K * card.shorterPerKelvin(), 0),
                conditions.intakeTemperature() + ", " + format.absolute(Objects.requireNonNull(card.station())),
                Objects.toString(conditions.speed(), null),
                test.id(),
                test.performedAt().atZone(test.zone()).toLocalDate().toString(),
                card.today().toString());
    }

    private static @Nullable String gauge(PumpUpTest test) {
        return test.instruments().stream()
                .filter(copy -> copy.kind() == InstrumentKind.GAUGE)
                .map(InstrumentCopy::tag)
                .findFirst()
                .orElse(null);
    }

    private static String volume(VolumeCopy copy) {
        return copy.volume() == null ? copy.label() : copy.label() + " (" + copy.volume() + ")";
    }

    private List<Step> steps(PassByCard card, PassByTime times) {
        return List.of(
                step(Standing.WATCH, times.watch(), card.limits().watchBelow()),
                step(Standing.PLAN, times.plan(), card.limits().planBelow()),
                step(Standing.ACT, times.act(), card.limits().actBelow()));
    }

    private Step step(Standing standing, Elapsed time, int percent) {
        var kind = standing == Standing.ACT ? Status.Kind.ALARM : Status.Kind.WATCH;
        boolean whole = time.seconds() == Math.rint(time.seconds());
        return new Step(
                new Status(kind, words.label("history.card", standing)),
                Rounded.places(time.seconds(), whole ? 0 : 1) + " s",
                String.valueOf(percent));
    }
}
