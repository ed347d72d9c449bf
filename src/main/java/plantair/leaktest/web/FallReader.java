package plantair.leaktest.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.leak.Decay;
import plantair.leaktest.FallReading;
import plantair.leaktest.LeakState;
import plantair.leaktest.LeakTestKind;
import plantair.pumpup.PossibleRange;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.VolumeUnit;
import plantair.register.Submission;
import plantair.testrecord.VolumeCopy;
import plantair.testrecord.web.VolumeChoices;

/** Reads what is particular to a falling pressure: the shut volume, the gauge and the readings. */
@Component
class FallReader {

    private static final int FEWEST = 4;

    private final VolumeChoices volumes;

    FallReader(VolumeChoices volumes) {
        this.volumes = volumes;
    }

    /**
     * What was read.
     *
     * @param readings two, or four and more; none when one was rejected
     * @param volumes that were shut
     */
    record Fall(List<FallReading> readings, List<VolumeCopy> volumes) {}

    Fall read(LeakTestForm form, long siteId, LeakState state, LeakTestKind kind, LeakTyping typing) {
        Submission sent = typing.sent();
        if (kind == LeakTestKind.LOAD_TIMES) {
            return new Fall(List.of(), List.of());
        }
        List<VolumeCopy> chosen = volumes.copies(form.getReceivers(), form.getPipes(), siteId, sent.errors());
        boolean typed = !form.getVolume().isBlank();
        if (typed == !chosen.isEmpty() && !sent.errors().hasFieldErrors("receivers")) {
            sent.reject("receivers", typed ? "leakTest.volume.both" : "leakTest.volume.none");
        }
        if (!Decay.isChokedAt(GaugePressure.of(state.atPressure()), state.stationPressure())) {
            sent.reject("atPressure.number", "leakTest.at.low");
        }
        return new Fall(kind == LeakTestKind.FALL ? many(form, typing) : two(form, typing), chosen);
    }

    static Optional<Entered> volume(LeakTestForm form, LeakTyping typing) {
        var checks = typing.sent().checks();
        return checks.positive("volume", checks.optional("volume", form.getVolume(), VolumeUnit.class));
    }

    static Optional<Entered> volumePercent(LeakTestForm form, LeakTyping typing) {
        return form.getVolume().isBlank() ? Optional.empty() : typing.percent("volumePercent", form.getVolumePercent());
    }

    /** A step as fine as any gauge shows, and smaller than what gauges read. */
    static Optional<Entered> division(LeakTestForm form, LeakTyping typing) {
        var checks = typing.sent().checks();
        return typing.possible(
                "division",
                checks.positive("division", checks.required("division", form.getDivision(), PressureUnit.class)),
                PossibleRange.GAUGE_PRESSURE,
                step -> PressureDifference.of(step).pascals());
    }

    private static List<FallReading> two(LeakTestForm form, LeakTyping typing) {
        Optional<Entered> first = typing.gauge("first", form.getFirst(), true);
        Optional<Entered> last = typing.gauge("last", form.getLast(), true);
        Optional<Entered> waited = typing.time("waited", form.getWaited(), true);
        if (first.isEmpty() || last.isEmpty() || waited.isEmpty()) {
            return List.of();
        }
        if (pascals(last.get()) > pascals(first.get())) {
            typing.sent()
                    .warnings()
                    .add(
                            "last",
                            "leakTest.rose",
                            last.get().toString(),
                            first.get().toString());
        }
        return List.of(
                new FallReading(new Entered("0", DurationUnit.SECOND), first.get()),
                new FallReading(waited.get(), last.get()));
    }

    private static double pascals(Entered pressure) {
        return GaugePressure.of(pressure).pascals();
    }

    private static List<FallReading> many(LeakTestForm form, LeakTyping typing) {
        List<FallReading> readings = new ArrayList<>();
        boolean pasted = !form.getPasted().isBlank();
        for (int i = 0; i < form.getReadings().size(); i++) {
            FallRow row = form.getReadings().get(i);
            if (!row.isBlank()) {
                row("readings[" + i + "]", row, typing).ifPresent(readings::add);
            }
        }
        if (pasted && !form.getReadings().stream().allMatch(FallRow::isBlank)) {
            typing.sent().reject("pasted", "leakTest.pasted.both");
        } else if (pasted) {
            readings.addAll(new PastedReadings(typing.sent())
                    .read(form.getPasted(), form.getPastedTime(), form.getPastedPressure()));
        }
        String path = pasted ? "pasted" : "readings[0].at.number";
        if (!typing.sent().errors().hasErrors()) {
            refuse(readings, form.getReadings().isEmpty() ? "pasted" : path, typing.sent());
        }
        return readings;
    }

    private static void refuse(List<FallReading> readings, String path, Submission sent) {
        if (readings.size() < FEWEST) {
            sent.reject(path, "leakTest.readings.few", readings.size(), FEWEST);
            return;
        }
        for (int i = 1; i < readings.size(); i++) {
            Entered time = readings.get(i).atTime();
            Entered before = readings.get(i - 1).atTime();
            if (FallReading.seconds(time) <= FallReading.seconds(before)) {
                sent.reject(path, "leakTest.readings.back", i + 1, time.toString(), before.toString());
                return;
            }
        }
    }

    private static Optional<FallReading> row(String path, FallRow row, LeakTyping typing) {
        Optional<Entered> at = typing.timeOrZero(path + ".at", row.getAt(), true);
        Optional<Entered> pressure = typing.gauge(path + ".pressure", row.getPressure(), true);
        return at.flatMap(time -> pressure.map(read -> new FallReading(time, read)));
    }
}
