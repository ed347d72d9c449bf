package plantair.leaktest.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;
import plantair.equipment.Compressor;
import plantair.leaktest.LeakPlace;
import plantair.leaktest.LeakTestDraft;
import plantair.leaktest.LeakTestKind;
import plantair.leaktest.MachineCopy;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowBasis;
import plantair.quantity.MeasuredFlow;
import plantair.site.Site;
import plantair.supply.Capacity;
import plantair.supply.CapacityPart;
import plantair.testrecord.MeasuredOutput;
import plantair.testrecord.web.VolumeChoices;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.QuantityFormat;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** What the page of a leak test's form needs beside the form. */
@Component
class LeakTestFormPage {

    private static final List<LeakPlace> OF_SYSTEM = List.of(LeakPlace.WHOLE_SYSTEM, LeakPlace.PART_OF_SYSTEM);

    private final MachineReader machines;
    private final VolumeChoices volumes;
    private final Choices choices;
    private final MessageSource messages;

    LeakTestFormPage(MachineReader machines, VolumeChoices volumes, Choices choices, MessageSource messages) {
        this.machines = machines;
        this.volumes = volumes;
        this.choices = choices;
        this.messages = messages;
    }

    /** Offers the machines of the site; those of an earlier record as it has them, unless that is null. */
    void offer(LeakTestForm form, Site site, @Nullable LeakTestDraft old, UnitSet units) {
        Map<Long, MachineCopy> copies = old == null
                ? Map.of()
                : old.machines().stream().collect(Collectors.toMap(MachineCopy::compressorId, Function.identity()));
        Stream.concat(machines.of(site.id()).stream().map(Compressor::id), copies.keySet().stream())
                .distinct()
                .forEach(id -> form.getMachines().add(MachineRow.of(id, copies.get(id), units)));
    }

    ModelAndView fill(ModelAndView page, LeakTestForm form, Site site, UnitSet units) {
        List<Compressor> all = machines.of(site.id());
        boolean loads = form.getKind().equals(LeakTestKind.LOAD_TIMES.name());
        return page.addObject("siteId", site.id())
                .addObject("siteName", site.name())
                .addObject("kind", form.getKind())
                .addObject("places", places(loads))
                .addObject(
                        "compressors",
                        all.stream()
                                .map(one -> new Choice(String.valueOf(one.id()), one.tag()))
                                .toList())
                .addObject("offers", loads ? offers(all, units) : Map.of())
                .addObject("receiverChoices", volumes.receivers(site.id()))
                .addObject("pipeChoices", volumes.pipes(site.id()))
                .addObject("pressures", UnitChoices.pressure())
                .addObject("barometers", UnitChoices.barometer())
                .addObject("durations", UnitChoices.duration())
                .addObject("volumes", UnitChoices.volume())
                .addObject("flows", UnitChoices.flow())
                .addObject("percent", UnitChoices.only(FixedUnit.PERCENT));
    }

    private List<Choice> places(boolean loads) {
        return choices.of("leakTest.place", LeakPlace.class).stream()
                .filter(choice -> !loads || OF_SYSTEM.contains(LeakPlace.valueOf(choice.code())))
                .toList();
    }

    /**
     * A machine as the form offers it.
     *
     * @param tag its tag
     * @param measured what it was measured to deliver last; null when it was not
     */
    record Offer(String tag, @Nullable String measured) {}

    private Map<String, Offer> offers(List<Compressor> all, UnitSet units) {
        Map<Long, MeasuredOutput> measured = machines.outputs(all);
        return all.stream()
                .collect(Collectors.toMap(
                        one -> String.valueOf(one.id()),
                        one -> new Offer(
                                one.tag(),
                                Optional.ofNullable(measured.get(one.id()))
                                        .map(output -> measured(output, units))
                                        .orElse(null))));
    }

    private String measured(MeasuredOutput output, UnitSet units) {
        var format = QuantityFormat.of(units);
        return messages.getMessage(
                "leakTest.measured",
                new Object[] {
                    LeakWords.flow(format, flow(output)), format.gauge(output.at()), output.testId(), output.on()
                },
                LocaleContextHolder.getLocale());
    }

    private static MeasuredFlow flow(MeasuredOutput output) {
        var part = new CapacityPart("", output.flow(), output.relativeRandom(), output.shared());
        return new Capacity(List.of(part), FlowBasis.INTAKE).total();
    }
}
