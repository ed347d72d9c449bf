package plantair.leaktest.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import plantair.leak.LeakLevel;
import plantair.leaktest.LeakResult;
import plantair.leaktest.LeakTest;
import plantair.quantity.MeasuredFlow;
import plantair.web.QuantityFormat;
import plantair.web.Status;
import plantair.web.UnitSet;

/**
 * Puts leaks into words and numbers of a person's units. Computes nothing.
 *
 * @param units the person's units
 * @param messages the words
 * @param locale the language
 */
record LeakWords(UnitSet units, MessageSource messages, Locale locale) {

    QuantityFormat format() {
        return QuantityFormat.of(units);
    }

    String say(String key, @Nullable Object... args) {
        return messages.getMessage(key, args, locale);
    }

    /** A flow with its standard uncertainty: 37.8 ± 1.2 cfm. */
    static String flow(QuantityFormat format, MeasuredFlow flow) {
        double value = flow.flow().cubicMetresPerSecond();
        double u = flow.standardUncertainty().cubicMetresPerSecond();
        return value == 0 || u == 0 ? format.flow(flow.flow()) : format.flow(flow.flow(), u / Math.abs(value));
    }

    /** What a test tells in one line; for a list. */
    String inShort(LeakResult result) {
        String share = result.loads()
                .map(loads ->
                        format().percent(loads.share().share(), loads.share().u()) + " · ")
                .orElse("");
        return share
                + result.leak()
                        .map(leak -> say("leakTest.at", flow(format(), leak), format().gauge(result.at())))
                        .orElse(say("leakTest.noLeak"));
    }

    /** How much that is, of load times. */
    Optional<Status> level(LeakResult result) {
        return result.loads().map(loads -> LeakLevel.of(loads.share().share())).map(this::level);
    }

    private Status level(LeakLevel level) {
        Status.Kind kind = switch (level) {
            case WELL_KEPT -> Status.Kind.GOOD;
            case BETWEEN -> Status.Kind.WATCH;
            case NEGLECTED -> Status.Kind.ALARM;
        };
        return new Status(kind, say("leak.level." + level));
    }

    /**
     * Something odd about a test.
     *
     * @param status how bad it is
     * @param text in words
     */
    record Finding(Status status, String text) {}

    /** What is odd about a test. */
    List<Finding> findings(LeakTest test, LeakResult result) {
        List<Finding> findings = new ArrayList<>();
        result.loads()
                .filter(loads -> !loads.share().isEnough())
                .ifPresent(loads -> add(
                        findings,
                        Status.Kind.WATCH,
                        "leakTest.fewCycles",
                        loads.share().cycles()));
        if (test.draft().machines().stream().anyMatch(machine -> !machine.isMeasured())) {
            add(findings, Status.Kind.WATCH, "leakTest.capacityTyped");
        }
        result.two().ifPresent(two -> ofTwo(two, findings));
        result.fall()
                .ifPresent(fall -> fall.outcome()
                        .findings()
                        .forEach(finding -> add(
                                findings,
                                finding.code().isStop()
                                        ? Status.Kind.ALARM
                                        : kind(finding.code().name()),
                                "leak.finding." + finding.code(),
                                Math.round(finding.number()))));
        if (!test.draft().state().usersOff() && !test.draft().place().isOfMachine()) {
            add(findings, Status.Kind.ALARM, "leakTest.usersWereOn");
        }
        if (!test.draft().state().drainsOff()) {
            add(findings, Status.Kind.WATCH, "leakTest.drainsWereOn");
        }
        return findings;
    }

    private static Status.Kind kind(String code) {
        return code.startsWith("LEFT") || code.equals("NO_LEAK_TOLD") ? Status.Kind.NONE : Status.Kind.WATCH;
    }

    private void ofTwo(LeakResult.Two two, List<Finding> findings) {
        if (!two.readings().isChoked()) {
            add(findings, Status.Kind.ALARM, "leakTest.notChoked");
        } else if (two.decay().isRise()) {
            add(findings, Status.Kind.ALARM, "leak.finding.ROSE");
        } else if (!two.decay().isTold()) {
            add(findings, Status.Kind.NONE, "leak.finding.NO_LEAK_TOLD");
        }
    }

    private void add(List<Finding> findings, Status.Kind kind, String key, Object... args) {
        findings.add(new Finding(new Status(kind, say("leak.mark." + kind)), say(key, args)));
    }
}
