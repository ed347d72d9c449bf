package plantair.storage.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;
import plantair.equipment.Compressor;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.storage.web.StorageQuestion.Leaks;
import plantair.storage.web.StorageQuestion.Switching;
import plantair.supply.Capacity;
import plantair.supply.CapacityPart;
import plantair.supply.SwitchCycles;
import plantair.web.FieldChecks;

/**
 * Reads which machines run, what they deliver together and what leaks.
 *
 * @param form the question
 * @param site what it has
 * @param checks of the form
 * @param errors of the form
 */
record RunningReader(StorageForm form, StorageSite site, FieldChecks checks, Errors errors) {

    private static final MeasuredFlow NONE = new MeasuredFlow(new FlowRate(0), new FlowRate(0), FlowBasis.INTAKE);

    /** What runs. */
    record Running(MeasuredFlow total, boolean typed, List<Switching> switching, List<String> left) {}

    /** What leaks, and who says so. */
    record Leaking(MeasuredFlow flow, Leaks from) {}

    /** The machines chosen at the pressure at which an event begins; a capacity typed here stands for all of them. */
    Running read(Optional<Entered> pressure) {
        List<Compressor> chosen = site.measured().stream()
                .filter(machine -> form.getMachines().contains(String.valueOf(machine.id())))
                .toList();
        if (chosen.size() < form.getMachines().stream().distinct().count()) {
            errors.rejectValue("machines", "storage.machines.elsewhere");
        }
        Optional<SwitchCycles.Control> control =
                checks.optionalChoice("control", form.getControl(), SwitchCycles.Control.class);
        Optional<Entered> typed =
                checks.positive("capacity", checks.optional("capacity", form.getCapacity(), FlowUnit.class));
        if (typed.isPresent()) {
            FlowRate flow = FlowRate.of(typed.get());
            return new Running(
                    new MeasuredFlow(flow, new FlowRate(0), FlowBasis.INTAKE),
                    true,
                    List.of(new Switching("", flow, control.orElse(null))),
                    List.of());
        }
        return pressure.map(GaugePressure::of)
                .map(at -> measured(chosen, at, control.orElse(null)))
                .orElse(new Running(NONE, false, List.of(), List.of()));
    }

    private Running measured(List<Compressor> chosen, GaugePressure at, SwitchCycles.@Nullable Control control) {
        List<CapacityPart> parts = new ArrayList<>();
        List<Switching> switching = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (Compressor machine : chosen) {
            var output = Objects.requireNonNull(site.outputs().get(machine.id()));
            Optional<CapacityPart> part = output.part(machine.tag(), at);
            part.filter(one -> one.flow().cubicMetresPerSecond() > 0)
                    .ifPresentOrElse(
                            one -> {
                                parts.add(one);
                                switching.add(new Switching(
                                        machine.tag(),
                                        one.flow(),
                                        control != null
                                                ? control
                                                : StorageQuestion.switched(
                                                        machine.facts().plate().control())));
                            },
                            () -> left.add(machine.tag()));
        }
        return new Running(new Capacity(parts, FlowBasis.INTAKE).total(), false, switching, left);
    }

    /** As typed; else those of the newest leak test; else none, which the page says. */
    Leaking leaks(Optional<Entered> typed) {
        return typed.map(flow -> new Leaking(
                        new MeasuredFlow(FlowRate.of(flow), new FlowRate(0), FlowBasis.INTAKE), Leaks.TYPED))
                .or(() -> site.leak().map(leak -> new Leaking(leak.flow(), Leaks.TESTED)))
                .orElse(new Leaking(NONE, Leaks.NONE));
    }
}
