package plantair.storage.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.validation.Errors;
import plantair.equipment.Receiver;
import plantair.pumpup.PossibleRange;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/** Reads the form of a question about storage: all is understood and possible, or each that is not has a message. */
final class StorageReader {

    private static final double LONGEST_S = 604_800;

    private final StorageForm form;
    private final StorageSite site;
    private final Errors errors;
    private final FieldChecks checks;

    StorageReader(StorageForm form, StorageSite site, Errors errors) {
        this.form = form;
        this.site = site;
        this.errors = errors;
        this.checks = new FieldChecks(errors);
    }

    Optional<StorageQuestion> read() {
        List<Receiver> vessels = site.receivers(form.getReceivers());
        if (vessels.size() < form.getReceivers().stream().distinct().count()) {
            errors.rejectValue("receivers", "storage.elsewhere");
        }
        Optional<Entered> more = checks.positive("more", checks.optional("more", form.getMore(), VolumeUnit.class));
        Optional<Entered> cutOut = pressure("cutOut", form.getCutOut(), false);
        Optional<Entered> cutIn = pressure("cutIn", form.getCutIn(), true);
        Optional<Entered> lowest = pressure("lowest", form.getLowest(), true);
        above("cutOut", cutOut, cutIn, "storage.cutOut.low");
        above("cutIn", cutIn, lowest, "storage.cutIn.low");
        allowed(cutOut.isPresent() ? "cutOut" : "cutIn", cutOut.or(() -> cutIn), vessels);
        Optional<Entered> event = flow("event", form.getEvent());
        Optional<Entered> lasts = checks.within(
                "lasts",
                checks.positive("lasts", checks.optional("lasts", form.getLasts(), DurationUnit.class)),
                typed -> Elapsed.of(typed).seconds() <= LONGEST_S,
                "storage.lasts.long");
        if (lasts.isPresent() && event.isEmpty() && form.getEvent().isBlank()) {
            errors.rejectValue("event.number", "storage.event.missing");
        }
        Optional<Entered> steady = notNegative("steady", form.getSteady());
        var running = new RunningReader(form, site, checks, errors);
        var capacity = running.read(cutIn);
        var leaks = running.leaks(notNegative("leaks", form.getLeaks()));
        if (errors.hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(new StorageQuestion(
                site.station(),
                Stream.concat(
                                vessels.stream()
                                        .map(vessel ->
                                                VesselVolume.of(vessel.facts().volume())),
                                more.map(VesselVolume::of).stream())
                        .reduce(VesselVolume::plus)
                        .orElse(null),
                cutOut.map(GaugePressure::of).orElse(null),
                GaugePressure.of(cutIn.orElseThrow()),
                GaugePressure.of(lowest.orElseThrow()),
                event.map(FlowRate::of).orElse(null),
                lasts.map(Elapsed::of).orElse(null),
                steady.map(FlowRate::of).orElse(new FlowRate(0)),
                capacity.total(),
                capacity.typed(),
                leaks.flow(),
                leaks.from(),
                capacity.switching(),
                capacity.left()));
    }

    private Optional<Entered> pressure(String path, EnteredField field, boolean required) {
        return checks.within(
                path,
                checks.positive(
                        path,
                        required
                                ? checks.required(path, field, PressureUnit.class)
                                : checks.optional(path, field, PressureUnit.class)),
                typed -> PossibleRange.GAUGE_PRESSURE.contains(
                        GaugePressure.of(typed).pascals()),
                "range.GAUGE_PRESSURE");
    }

    private Optional<Entered> flow(String path, EnteredField field) {
        return checks.positive(path, checks.optional(path, field, FlowUnit.class));
    }

    private Optional<Entered> notNegative(String path, EnteredField field) {
        return checks.within(
                path, checks.optional(path, field, FlowUnit.class), typed -> typed.value() >= 0, "storage.negative");
    }

    private void above(String path, Optional<Entered> upper, Optional<Entered> lower, String code) {
        if (upper.isPresent() && lower.isPresent() && pascals(upper.get()) <= pascals(lower.get())) {
            errors.rejectValue(
                    path + ".number",
                    code,
                    new Object[] {upper.get().toString(), lower.get().toString()},
                    null);
        }
    }

    /** No pressure is reckoned with that a chosen receiver must not see. */
    private void allowed(String path, Optional<Entered> highest, List<Receiver> vessels) {
        for (Receiver vessel : vessels) {
            var limit = site.limits().get(vessel.id());
            if (highest.isPresent() && limit != null && pascals(highest.get()) > pascals(limit.pressure())) {
                errors.rejectValue(
                        path + ".number",
                        "storage.above." + limit.by().name(),
                        new Object[] {
                            highest.get().toString(),
                            vessel.facts().tag(),
                            limit.pressure().toString()
                        },
                        null);
            }
        }
    }

    private static double pascals(Entered typed) {
        return GaugePressure.of(typed).pascals();
    }
}
