package plantair.leaktest.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.leaktest.LeakState;
import plantair.leaktest.LeakTestDraft;
import plantair.leaktest.MachineCopy;
import plantair.quantity.Entered;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.site.Site;
import plantair.testrecord.MeasuredOutput;
import plantair.testrecord.MeasuredOutputs;

/** The compressors of a site that may have run in a leak test, with what they deliver. */
@Component
class MachineReader {

    private final Compressors compressors;
    private final MeasuredOutputs outputs;

    MachineReader(Compressors compressors, MeasuredOutputs outputs) {
        this.compressors = compressors;
        this.outputs = outputs;
    }

    /** Those in service. */
    List<Compressor> of(long siteId) {
        return compressors.findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(siteId).stream()
                .filter(Compressor::isInService)
                .toList();
    }

    /** What machines were measured to deliver last, by their ids. */
    Map<Long, MeasuredOutput> outputs(List<Compressor> machines) {
        return outputs.of(machines.stream().map(Compressor::id).toList());
    }

    /**
     * The machines that ran.
     *
     * @param old the test that is corrected, whose copies stay; null for a new one
     */
    List<MachineCopy> read(
            LeakTestForm form, Site site, LeakState state, @Nullable LeakTestDraft old, LeakTyping typing) {
        Map<String, Compressor> known =
                compressors.findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(site.id()).stream()
                        .collect(Collectors.toMap(compressor -> String.valueOf(compressor.id()), Function.identity()));
        List<MachineCopy> ran = new ArrayList<>();
        for (int i = 0; i < form.getMachines().size(); i++) {
            MachineRow row = form.getMachines().get(i);
            Compressor compressor = known.get(row.getId());
            if (row.hasRun() && compressor != null) {
                String path = "machines[" + i + "]";
                copy(path, row, compressor, old, typing)
                        .filter(copy -> isNear(path, copy, state, typing))
                        .ifPresent(ran::add);
            }
        }
        if (form.getMachines().stream().noneMatch(MachineRow::hasRun)) {
            typing.sent().errors().reject("leakTest.machines.none");
        }
        return ran;
    }

    private Optional<MachineCopy> copy(
            String path, MachineRow row, Compressor compressor, @Nullable LeakTestDraft old, LeakTyping typing) {
        if (!row.getCapacity().isBlank()) {
            return typed(path, row, compressor, typing);
        }
        Optional<MachineCopy> before = old == null
                ? Optional.empty()
                : old.machines().stream()
                        .filter(copy -> copy.isMeasured() && copy.compressorId() == compressor.id())
                        .findFirst();
        Optional<MachineCopy> measured =
                before.or(() -> outputs.of(compressor.id()).map(output -> MachineCopy.of(compressor, output)));
        if (measured.isEmpty()) {
            typing.sent().reject(path + ".capacity.number", "leakTest.capacity.missing", compressor.tag());
        }
        return measured;
    }

    private static Optional<MachineCopy> typed(String path, MachineRow row, Compressor compressor, LeakTyping typing) {
        var checks = typing.sent().checks();
        Optional<Entered> capacity = checks.positive(
                path + ".capacity", checks.required(path + ".capacity", row.getCapacity(), FlowUnit.class));
        Optional<Entered> at = typing.gauge(path + ".capacityAt", row.getCapacityAt(), true);
        Optional<Entered> percent = typing.percent(path + ".percent", row.getPercent());
        return capacity.flatMap(
                flow -> at.flatMap(pressure -> percent.map(part -> MachineCopy.of(compressor, flow, pressure, part))));
    }

    private static boolean isNear(String path, MachineCopy copy, LeakState state, LeakTyping typing) {
        boolean near = copy.at(GaugePressure.of(state.atPressure())).isPresent();
        if (!near) {
            typing.sent().reject(path + ".capacity.number", "leakTest.capacity.far", copy.label(), state.atPressure());
        }
        return near;
    }
}
