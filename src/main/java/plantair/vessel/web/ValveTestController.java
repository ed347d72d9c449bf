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
import plantair.register.Submission;
import plantair.vessel.Entry.Correction;
import plantair.vessel.RecordVessel;
import plantair.vessel.ReliefValve;
import plantair.vessel.ReliefValves;
import plantair.vessel.TestMethod;
import plantair.vessel.ValveTest;
import plantair.vessel.ValveTestDraft;
import plantair.vessel.ValveTests;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Records tests of relief valves, and corrections of them. */
@Controller
final class ValveTestController {

    private static final String FORM = "vessel/valve-test";

    private final ReliefValves valves;
    private final ValveTests tests;
    private final RecordVessel record;
    private final Choices choices;
    private final Clock clock;

    ValveTestController(ReliefValves valves, ValveTests tests, RecordVessel record, Choices choices, Clock clock) {
        this.valves = valves;
        this.tests = tests;
        this.record = record;
        this.choices = choices;
        this.clock = clock;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("methods", choices.of("valveTest.method", TestMethod.class));
        model.addAttribute("results", choices.of("valveTest.passed", ValveTestForm.Passed.class));
        model.addAttribute("pressures", UnitChoices.pressure());
    }

    @GetMapping("/valves/{id}/tests/new")
    ModelAndView blank(@PathVariable long id, UnitSet units) {
        return page(valve(id), null, new ModelAndView(FORM, "form", ValveTestForm.blank(units)));
    }

    @PostMapping("/valves/{id}/tests")
    ModelAndView add(
            @PathVariable long id,
            @ModelAttribute("form") ValveTestForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        return save(valve(id), null, form, errors, redirect, person);
    }

    @GetMapping("/valve-tests/{id}/correct")
    ModelAndView correct(@PathVariable long id, UnitSet units) {
        ValveTest old = test(id);
        ReliefValve valve = valve(old.draft().valveId());
        return tests.findByEntrySupersedesId(id).isPresent()
                ? new ModelAndView("redirect:/receivers/" + valve.receiver().id())
                : page(valve, old, new ModelAndView(FORM, "form", ValveTestForm.from(old, units)));
    }

    @PostMapping("/valve-tests/{id}/correct")
    ModelAndView saveCorrection(
            @PathVariable long id,
            @ModelAttribute("form") ValveTestForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        ValveTest old = test(id);
        return save(valve(old.draft().valveId()), old, form, errors, redirect, person);
    }

    private ModelAndView save(
            ReliefValve valve,
            @Nullable ValveTest old,
            ValveTestForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Vessel vessel = Vessel.of(valve.receiver(), clock);
        Optional<ValveTestDraft> draft = form.read(sent, valve, vessel);
        Correction correction = old == null
                ? null
                : new Typing(sent).correction(old.id(), form.getEdit().getReason(), form.getWithdrawn());
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), correction, by.by()));
        return saved.isPresent() ? sent.accepted(vessel.page(), redirect) : page(valve, old, sent.refused(FORM));
    }

    private ReliefValve valve(long id) {
        return valves.findWithReceiver(id).orElseThrow(() -> new NoSuchRecord("relief valve " + id));
    }

    private ValveTest test(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("test of a relief valve " + id));
    }

    private ModelAndView page(ReliefValve valve, @Nullable ValveTest old, ModelAndView page) {
        return page.addObject("vessel", Vessel.of(valve.receiver(), clock))
                .addObject("valve", valve.facts().tag())
                .addObject("isCorrection", old != null)
                .addObject(
                        "target",
                        old == null ? "/valves/" + valve.id() + "/tests" : "/valve-tests/" + old.id() + "/correct");
    }
}
