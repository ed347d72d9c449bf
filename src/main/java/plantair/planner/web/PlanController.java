package plantair.planner.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.quantity.FixedUnit;
import plantair.web.NoSuchRecord;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Plans a test of a machine. Nothing is stored: the address holds the whole question. */
@Controller
class PlanController {

    private final Compressors compressors;
    private final PlanVolumes volumes;
    private final UsualPlan usual;
    private final PlanReader reader;
    private final PlanViews views;

    PlanController(Compressors compressors, PlanVolumes volumes, UsualPlan usual, PlanReader reader, PlanViews views) {
        this.compressors = compressors;
        this.volumes = volumes;
        this.usual = usual;
        this.reader = reader;
        this.views = views;
    }

    @GetMapping("/compressors/{id}/plan")
    @Transactional(readOnly = true)
    public String plan(
            @PathVariable long id,
            @ModelAttribute("form") PlanForm form,
            BindingResult errors,
            UnitSet units,
            Model model,
            HttpServletResponse response) {
        Compressor compressor =
                compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
        boolean untouched = form.isUntouched();
        if (untouched) {
            usual.fill(form, compressor, units);
        }
        // what the usual things lack is for the person to fill in, not an error of theirs
        BindingResult found = untouched ? new BeanPropertyBindingResult(form, "form") : errors;
        Optional<PlanView> view = reader.read(form, compressor, units, found)
                .flatMap(setup -> views.of(setup, units).or(() -> {
                    found.rejectValue("flow.number", "plan.noBand");
                    return Optional.empty();
                }));
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        view.ifPresent(plan -> model.addAttribute("plan", plan));
        fill(model, compressor);
        return "planner/plan";
    }

    private void fill(Model model, Compressor compressor) {
        model.addAttribute("compressorId", compressor.id());
        model.addAttribute("tag", compressor.tag());
        model.addAttribute(
                "receiverChoices", volumes.receivers(compressor.site().id()));
        model.addAttribute("pipeChoices", volumes.pipes(compressor.site().id()));
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("flows", UnitChoices.flow());
        model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
    }
}
