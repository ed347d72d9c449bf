package plantair.testrecord.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.instrument.Calibration;
import plantair.instrument.Calibrations;
import plantair.testrecord.Restatements;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** The tests that a gauge's calibration touches, and the signature that restates them. */
@Controller
class ImpactController {

    private static final String PAGE = "tests/impact";

    private final Calibrations calibrations;
    private final Restatements restatements;
    private final ImpactViews views;

    ImpactController(Calibrations calibrations, Restatements restatements, ImpactViews views) {
        this.calibrations = calibrations;
        this.restatements = restatements;
        this.views = views;
    }

    @GetMapping("/calibrations/{id}/impact")
    @Transactional(readOnly = true)
    public String show(@PathVariable long id, UnitSet units, Locale locale, Model model) {
        model.addAttribute("form", new ImpactForm());
        return page(find(id), units, locale, model);
    }

    @PostMapping("/calibrations/{id}/impact")
    @Transactional
    public String sign(
            @PathVariable long id,
            @ModelAttribute("form") ImpactForm form,
            BindingResult errors,
            UnitSet units,
            Person person,
            Locale locale,
            Model model,
            RedirectAttributes redirect,
            HttpServletResponse response) {
        Calibration calibration = find(id);
        var checks = new FieldChecks(errors);
        var note = checks.text("note", form.getNote(), 1000, true);
        if (note.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(calibration, units, locale, model);
        }
        restatements.sign(calibration, note.get(), person.name());
        Flash.say(redirect, "impact.signed");
        return "redirect:/calibrations/" + id + "/impact";
    }

    private String page(Calibration calibration, UnitSet units, Locale locale, Model model) {
        List<ImpactViews.Row> rows = views.rows(restatements.touchedBy(calibration), calibration, units, locale);
        model.addAttribute("rows", rows);
        model.addAttribute("impact", views.head(calibration));
        return PAGE;
    }

    private Calibration find(long id) {
        return calibrations.findById(id).orElseThrow(() -> new NoSuchRecord("calibration " + id));
    }
}
