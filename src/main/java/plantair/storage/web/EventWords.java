package plantair.storage.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.quantity.Elapsed;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.VesselVolume;
import plantair.supply.AirEvent;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;
import plantair.web.Words;

/** What storage does for an event, in words. */
final class EventWords {

    private final StorageQuestion question;
    private final QuantityFormat format;
    private final QuantityFormat working;

    EventWords(StorageQuestion question, UnitSet units) {
        this.question = question;
        this.format = QuantityFormat.of(units);
        this.working = QuantityFormat.working(units);
    }

    Words answer() {
        VesselVolume volume = question.volume();
        Optional<AirEvent> event = question.airEvent();
        if (event.isEmpty()) {
            return volume == null
                    ? Words.of("storage.answer.nothing")
                    : Words.of(
                            "storage.answer.stored",
                            format.vessel(volume),
                            format.freeAir(question.fall().in(volume)),
                            format.gauge(question.cutIn()),
                            format.gauge(question.lowest()));
        }
        if (!(event.get().shortfall().cubicMetresPerSecond() > 0)) {
            return Words.of(
                    "storage.answer.covered",
                    flow(question.capacity()),
                    format.flow(event.get().demand()));
        }
        Elapsed lasts = question.lasts();
        if (lasts == null) {
            return volume == null ? Words.of("storage.answer.nothing") : carries(event.get(), volume);
        }
        String needed = format.vessel(event.get().volumeFor(lasts), event.get().relativeU());
        String time = format.duration(lasts, 0);
        return volume == null
                ? Words.of("storage.answer.needs", time, needed)
                : Words.of(
                        "storage.answer." + event.get().carried(volume, lasts).name(),
                        time,
                        needed,
                        format.vessel(volume));
    }

    private Words carries(AirEvent event, VesselVolume volume) {
        Elapsed time = event.holds(volume).orElseThrow();
        return Words.of("storage.answer.carries", format.vessel(volume), format.duration(time, event.relativeU()));
    }

    /** How long they carry it at most, and when they are full again. */
    List<Words> more() {
        VesselVolume volume = question.volume();
        Optional<AirEvent> event = question.airEvent();
        List<Words> more = new ArrayList<>();
        if (event.isEmpty() || volume == null) {
            return more;
        }
        if (question.lasts() != null) {
            event.get()
                    .holds(volume)
                    .ifPresent(time -> more.add(Words.of(
                            "storage.atMost", format.duration(time, event.get().relativeU()))));
        }
        if (event.get().shortfall().cubicMetresPerSecond() > 0) {
            more.add(event.get()
                    .refills(volume)
                    .map(time -> Words.of(
                            "storage.refills",
                            format.gauge(question.lowest()),
                            format.gauge(question.cutIn()),
                            format.duration(time, 0)))
                    .orElse(Words.of("storage.refillsNever")));
        }
        return more;
    }

    /** S15 with its numbers, in units that fit each other. */
    List<Words> working() {
        Optional<AirEvent> event = question.airEvent();
        if (event.isEmpty() || !(event.get().shortfall().cubicMetresPerSecond() > 0)) {
            return List.of();
        }
        List<Words> steps = new ArrayList<>();
        steps.add(Words.of(
                "storage.working.short",
                working.flow(event.get().event()),
                working.flow(question.steady()),
                working.flow(question.leaks().flow()),
                working.flow(question.capacity().flow()),
                working.flow(event.get().shortfall())));
        String fall = working.difference(question.cutIn().minus(question.lowest()));
        String shortfall = working.flow(event.get().shortfall());
        String station = working.absolute(question.station());
        Elapsed lasts = question.lasts();
        if (lasts != null) {
            steps.add(Words.of(
                    "storage.working.volume",
                    working.workingTime(lasts),
                    station,
                    shortfall,
                    fall,
                    working.workingVessel(event.get().volumeFor(lasts))));
        }
        VesselVolume volume = question.volume();
        if (volume != null) {
            steps.add(Words.of(
                    "storage.working.time",
                    working.workingVessel(volume),
                    fall,
                    station,
                    shortfall,
                    working.workingTime((event.get().holds(volume).orElseThrow()))));
        }
        return steps;
    }

    String flow(MeasuredFlow measured) {
        double of = measured.flow().cubicMetresPerSecond();
        return of > 0 && measured.standardUncertainty().cubicMetresPerSecond() > 0
                ? format.flow(measured.flow(), measured.standardUncertainty().over(measured.flow()))
                : format.flow(measured.flow());
    }
}
