package plantair.demand.web;

import java.util.Optional;
import plantair.pumpup.PossibleRange;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.register.Submission;
import plantair.web.EnteredField;

/**
 * Reads the fields that the forms of supply and demand have in common. What is usual is common practice, no source.
 *
 * @param sent the form
 */
record Typing(Submission sent) {

    private static final double LEAST_LITRES = 0.02;
    private static final double MOST_LITRES = 5_000;
    private static final double MOST_MM = 50;
    private static final double MOST_PERCENT = 1_000;

    /** A gauge pressure above zero, as a plant has it. */
    Optional<Entered> pressure(String path, EnteredField field, boolean required) {
        var checks = sent.checks();
        var typed = checks.positive(
                path,
                required
                        ? checks.required(path, field, PressureUnit.class)
                        : checks.optional(path, field, PressureUnit.class));
        if (typed.isPresent()
                && !PossibleRange.GAUGE_PRESSURE.contains(
                        PressureDifference.of(typed.get()).pascals())) {
            sent.reject(path + ".number", "range.GAUGE_PRESSURE", typed.get().toString());
            return Optional.empty();
        }
        return typed;
    }

    /** A flow above zero; asks about one that no tool has. */
    Optional<Entered> flow(String path, EnteredField field, boolean required) {
        var checks = sent.checks();
        var typed = checks.positive(
                path,
                required ? checks.required(path, field, FlowUnit.class) : checks.optional(path, field, FlowUnit.class));
        typed.ifPresent(flow -> {
            double litres = FlowRate.of(flow).in(FlowUnit.LITRE_PER_SECOND);
            if (litres < LEAST_LITRES || litres > MOST_LITRES) {
                sent.warnings().add(path, "demand.flow.unusual", flow.toString());
            }
        });
        return typed;
    }

    /** A bore above zero; asks about one that no nozzle has. */
    Optional<Entered> bore(String path, EnteredField field) {
        var typed = sent.checks().positive(path, sent.checks().required(path, field, LengthUnit.class));
        typed.ifPresent(bore -> {
            if (Length.of(bore).in(LengthUnit.MILLIMETRE) > MOST_MM) {
                sent.warnings().add(path, "demand.bore.unusual", bore.toString());
            }
        });
        return typed;
    }

    /** A share above 0 and at most 100 %. */
    Optional<Entered> share(String path, EnteredField field) {
        var typed = sent.checks().positive(path, sent.checks().optional(path, field, FixedUnit.PERCENT));
        return within(path, typed, 1);
    }

    /** A percentage of zero or more. */
    Optional<Entered> percent(String path, EnteredField field) {
        var typed = sent.checks().optional(path, field, FixedUnit.PERCENT);
        if (typed.isPresent() && typed.get().value() < 0) {
            sent.reject(path + ".number", "demand.percent.negative", typed.get().toString());
            return Optional.empty();
        }
        return within(path, typed, MOST_PERCENT / 100);
    }

    private Optional<Entered> within(String path, Optional<Entered> typed, double most) {
        if (typed.isPresent() && typed.get().part() > most) {
            sent.reject(path + ".number", "demand.percent.most", typed.get().toString(), String.valueOf((int)
                    (100 * most)));
            return Optional.empty();
        }
        return typed;
    }
}
