package plantair.leaktest.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.leak.Decay;
import plantair.leak.FittedFall;
import plantair.leak.LoadCycle;
import plantair.leak.ShutAir;
import plantair.leak.TwoReadings;
import plantair.leaktest.LeakResult;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Rounded;
import plantair.supply.Capacity;
import plantair.web.QuantityFormat;

/**
 * The steps from the readings of a leak test to its result, each with its numbers in it. Computes nothing.
 *
 * @param words of the person
 */
record LeakWorking(LeakWords words) {

    private static final int DIGITS = 5;

    /**
     * One step.
     *
     * @param equation its number in docs/supply.md
     * @param text the formula with its numbers
     */
    record Step(String equation, String text) {}

    List<Step> of(LeakResult result) {
        List<Step> steps = new ArrayList<>();
        result.loads().ifPresent(loads -> loads(loads, result, steps));
        result.two().ifPresent(two -> two(two, result, steps));
        result.fall().ifPresent(fall -> fall(fall, result, steps));
        return steps;
    }

    private void loads(LeakResult.Loads loads, LeakResult result, List<Step> steps) {
        LoadCycle sum = LoadCycle.sum(loads.cycles());
        add(
                steps,
                "S4",
                "leakTest.working.share",
                seconds(sum.loadSeconds()),
                seconds(sum.unloadSeconds()),
                seconds(sum.offSeconds()),
                words.format().percent(loads.share().share()));
        if (sum.offSeconds() > 0) {
            add(
                    steps,
                    "S4",
                    "leakTest.working.off",
                    seconds(sum.offSeconds()),
                    words.format().percent(sum.shareIfOffWereLoaded()));
        }
        add(
                steps,
                "S4",
                loads.cycles().size() == 1 ? "leakTest.working.oneCycle" : "leakTest.working.scatter",
                loads.cycles().size(),
                words.format().percent(loads.share().share(), loads.share().u()));
        loads.capacity().ifPresent(capacity -> leak(loads, capacity, result, steps));
    }

    private void leak(LeakResult.Loads loads, Capacity capacity, LeakResult result, List<Step> steps) {
        MeasuredFlow total = capacity.total();
        capacity.parts()
                .forEach(part -> add(
                        steps,
                        "S9",
                        "leakTest.working.machine",
                        part.label(),
                        working().flow(part.flow()),
                        words.format().gauge(result.at())));
        add(steps, "S9", "leakTest.working.capacity", LeakWords.flow(words.format(), total));
        result.leak()
                .ifPresent(leak -> add(
                        steps,
                        "S5",
                        "leakTest.working.leak",
                        Rounded.significant(loads.share().share(), DIGITS),
                        working().flow(total.flow()),
                        LeakWords.flow(words.format(), leak)));
    }

    private void two(LeakResult.Two two, LeakResult result, List<Step> steps) {
        TwoReadings read = two.readings();
        volume(two.shut(), read.station(), steps);
        add(
                steps,
                "S7",
                "leakTest.working.mean",
                working().gauge(read.first()),
                working().gauge(read.last()),
                working().workingTime(read.waited()),
                LeakWords.flow(words.format(), two.meanLoss()));
        var byGuide = two.byGuide();
        if (byGuide.isPresent()) {
            add(
                    steps,
                    "S7",
                    "leakTest.working.guide",
                    LeakWords.flow(words.format(), byGuide.get()),
                    words.format().gauge(read.first()),
                    Rounded.places(read.exactFactor(), 2));
        } else {
            add(steps, "S7", "leakTest.working.noGuide");
        }
        if (read.isChoked()) {
            add(
                    steps,
                    "S6",
                    "leakTest.working.decay",
                    working().absolute(read.first().above(read.station())),
                    working().absolute(read.last().above(read.station())),
                    working().elapsed(read.waited()),
                    perMinute(two.decay()));
            exponential(result, steps);
        }
    }

    private void fall(LeakResult.Fall fall, LeakResult result, List<Step> steps) {
        volume(fall.shut(), result.station().pressure(), steps);
        Optional<FittedFall> line = fall.outcome().fall();
        line.ifPresent(fitted -> {
            add(
                    steps,
                    "S8",
                    "leakTest.working.fit",
                    fitted.readings(),
                    words.format().gauge(fitted.first()),
                    words.format().gauge(fitted.last()),
                    words.format().elapsed(fitted.waited()),
                    perMinute(fitted.decay()));
            exponential(result, steps);
        });
    }

    private void volume(ShutAir shut, AbsolutePressure station, List<Step> steps) {
        add(
                steps,
                "M2",
                "leakTest.working.volume",
                working().workingVessel(shut.volume()),
                words.format().percent(shut.relativeU()),
                working().absolute(station));
    }

    private void exponential(LeakResult result, List<Step> steps) {
        result.leak()
                .ifPresent(leak -> add(
                        steps,
                        "S6",
                        "leakTest.working.exponential",
                        words.format().gauge(result.at()),
                        LeakWords.flow(words.format(), leak)));
    }

    private String perMinute(Decay decay) {
        return words.format().percent(decay.perMinute(), decay.perMinuteU());
    }

    private static String seconds(double seconds) {
        return seconds > 0 ? Rounded.places(new Elapsed(seconds).in(DurationUnit.SECOND), 1) + " s" : "0 s";
    }

    private QuantityFormat working() {
        return QuantityFormat.working(words.units());
    }

    private void add(List<Step> steps, String equation, String key, @Nullable Object... args) {
        steps.add(new Step(equation, words.say(key, args)));
    }
}
