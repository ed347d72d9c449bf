package plantair.vessel.web;

import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.vessel.ReliefValve;
import plantair.vessel.ReliefValves;
import plantair.vessel.ValveFacts;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Adds relief valves to a receiver and changes what is said of them. */
@Controller
final class ValveController {

    private static final String FORM = "vessel/valve";

    private final Receivers receivers;
    private final ReliefValves valves;
    private final Register<ValveFacts, ReliefValve> register;
    private final Clock clock;

    ValveController(Receivers receivers, ReliefValves valves, Register<ValveFacts, ReliefValve> register, Clock clock) {
        this.receivers = receivers;
        this.valves = valves;
        this.register = register;
        this.clock = clock;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("flows", UnitChoices.flow());
    }

    @GetMapping("/receivers/{id}/valves/new")
    ModelAndView blank(@PathVariable long id, UnitSet units) {
        return page(vessel(receiver(id)), null, new ModelAndView(FORM, "form", ValveForm.blank(units)));
    }

    @PostMapping("/receivers/{id}/valves")
    ModelAndView add(
            @PathVariable long id,
            @ModelAttribute("form") ValveForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Receiver receiver = receiver(id);
        Vessel vessel = vessel(receiver);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<ValveFacts> facts = form.read(sent, vessel);
        checkTag(sent, facts, id, 0);
        var saved = sent.save(
                "tag", by -> register.add(new ReliefValve(receiver, facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted(vessel.page(), redirect) : page(vessel, null, sent.refused(FORM));
    }

    /** Leads to the page that shows the valve. */
    @GetMapping("/valves/{id}")
    String find(@PathVariable long id) {
        return "redirect:/receivers/" + valve(id).receiver().id();
    }

    @GetMapping("/valves/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        ReliefValve valve = valve(id);
        return page(vessel(valve.receiver()), valve, new ModelAndView(FORM, "form", ValveForm.from(valve, units)));
    }

    @PostMapping("/valves/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") ValveForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        ReliefValve valve = valve(id);
        Vessel vessel = vessel(valve.receiver());
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<ValveFacts> facts = form.read(sent, vessel);
        checkTag(sent, facts, vessel.id(), id);
        sent.change(register, valve, facts);
        var saved =
                sent.save("tag", by -> register.revise(id, valve.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted(vessel.page(), redirect) : page(vessel, valve, sent.refused(FORM));
    }

    private Receiver receiver(long id) {
        return receivers.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("receiver " + id));
    }

    private ReliefValve valve(long id) {
        return valves.findWithReceiver(id).orElseThrow(() -> new NoSuchRecord("relief valve " + id));
    }

    private Vessel vessel(Receiver receiver) {
        return Vessel.of(receiver, clock);
    }

    private static ModelAndView page(Vessel vessel, @Nullable ReliefValve valve, ModelAndView page) {
        return page.addObject("vessel", vessel)
                .addObject("changed", valve == null ? null : valve.facts().tag())
                .addObject("target", valve == null ? vessel.page() + "/valves" : "/valves/" + valve.id());
    }

    private void checkTag(Submission sent, Optional<ValveFacts> facts, long receiver, long id) {
        if (facts.isPresent()
                && valves.existsByReceiverIdAndFactsTagIgnoreCaseAndIdNot(
                        receiver, facts.get().tag(), id)) {
            sent.reject("tag", "register.taken");
        }
    }
}
