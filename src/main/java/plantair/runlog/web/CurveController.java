package plantair.runlog.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.pumpup.PossibleRange;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.runlog.LoggedRunWithdrawals;
import plantair.runlog.LoggedRuns;
import plantair.runlog.RunCurves;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.web.FieldChecks;
import plantair.web.NoSuchRecord;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Flow against pressure of a test, and at any pressure that is asked for. */
@Controller
class CurveController {

    private final PumpUpTests tests;
    private final RunCurves curves;
    private final LoggedRuns runs;
    private final LoggedRunWithdrawals withdrawals;
    private final CurveViews views;

    CurveController(
            PumpUpTests tests, RunCurves curves, LoggedRuns runs, LoggedRunWithdrawals withdrawals, CurveViews views) {
        this.tests = tests;
        this.curves = curves;
        this.runs = runs;
        this.withdrawals = withdrawals;
        this.views = views;
    }

    @GetMapping("/tests/{id}/curve")
    @Transactional(readOnly = true)
    public String show(
            @PathVariable long id,
            @ModelAttribute("form") AtForm form,
            BindingResult errors,
            UnitSet units,
            Locale locale,
            Model model,
            HttpServletResponse response) {
        PumpUpTest test = tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
        Optional<GaugePressure> asked = asked(form, errors);
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        if (form.getAt().getUnit().isBlank()) {
            form.getAt().setUnit(units.pressure().code());
        }
        model.addAttribute("testId", id);
        model.addAttribute("tag", test.compressor().tag());
        model.addAttribute("day", test.performedAt().atZone(test.zone()).toLocalDate());
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("curve", views.whole(test, asked.orElse(null), units, locale));
        model.addAttribute("withdrawn", withdrawn(test));
        return "logs/curve";
    }

    private List<WithdrawnLog> withdrawn(PumpUpTest test) {
        var all = runs.findByTestIdInOrderById(curves.idsOf(test));
        var gone = withdrawals.findByLoggedRunIdIn(
                all.stream().map(run -> run.id()).toList());
        return all.stream()
                .filter(run -> gone.stream().anyMatch(one -> one.getId() == run.id()))
                .map(run -> new WithdrawnLog(run.id(), run.fileName()))
                .toList();
    }

    /** A logged run that counts no more. */
    record WithdrawnLog(long id, String fileName) {}

    private static Optional<GaugePressure> asked(AtForm form, BindingResult errors) {
        Optional<Entered> entered = new FieldChecks(errors).optional("at", form.getAt(), PressureUnit.class);
        Optional<GaugePressure> at = entered.map(GaugePressure::of);
        if (at.isPresent() && !PossibleRange.GAUGE_PRESSURE.contains(at.get().pascals())) {
            errors.rejectValue(
                    "at.number",
                    "range.GAUGE_PRESSURE",
                    new Object[] {entered.get().toString()},
                    null);
            return Optional.empty();
        }
        return at;
    }
}
