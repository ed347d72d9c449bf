package plantair.vessel.web;

import java.time.Clock;
import java.util.List;
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
import plantair.equipment.Receivers;
import plantair.register.Submission;
import plantair.vessel.Entry.Correction;
import plantair.vessel.Inspection;
import plantair.vessel.InspectionDraft;
import plantair.vessel.InspectionKind;
import plantair.vessel.Inspections;
import plantair.vessel.RecordVessel;
import plantair.vessel.VesselFiles;
import plantair.vessel.WallPart;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Records inspections of receivers, and corrections of them. */
@Controller
final class InspectionController {

    private static final String FORM = "vessel/inspection";
    private static final int ROWS = 2;

    private final Receivers receivers;
    private final Inspections inspections;
    private final VesselFiles files;
    private final RecordVessel record;
    private final Choices choices;
    private final Clock clock;

    InspectionController(
            Receivers receivers,
            Inspections inspections,
            VesselFiles files,
            RecordVessel record,
            Choices choices,
            Clock clock) {
        this.receivers = receivers;
        this.inspections = inspections;
        this.files = files;
        this.record = record;
        this.choices = choices;
        this.clock = clock;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("kinds", choices.of("inspection.kind", InspectionKind.class));
        model.addAttribute("parts", choices.of("wall.part", WallPart.class));
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("thicknesses", UnitChoices.bore());
    }

    /** Offers the places of the last inspection that measured any, so that each is measured under its name again. */
    @GetMapping("/receivers/{id}/inspections/new")
    ModelAndView blank(@PathVariable long id, UnitSet units) {
        Vessel vessel = vessel(id);
        InspectionForm form = InspectionForm.blank(units, 0);
        files.of(List.of(id)).get(id).inspections().stream()
                .map(inspection -> inspection.draft().readings())
                .filter(readings -> !readings.isEmpty())
                .findFirst()
                .ifPresent(
                        readings -> readings.forEach(entry -> form.getReadings().add(WallRow.named(entry, units))));
        form.fill(units, ROWS);
        return page(vessel, null, new ModelAndView(FORM, "form", form));
    }

    @GetMapping("/inspections/{old}/correct")
    ModelAndView correct(@PathVariable("old") long id, UnitSet units) {
        Inspection old = find(id);
        Vessel vessel = vessel(old.draft().receiverId());
        return inspections.findByEntrySupersedesId(id).isPresent()
                ? new ModelAndView("redirect:" + vessel.page())
                : page(vessel, old, new ModelAndView(FORM, "form", InspectionForm.from(old, units)));
    }

    /** The button for more rows: the form as typed, unchecked, with rows more. */
    @PostMapping(
            path = {"/receivers/{id}/inspections", "/inspections/{old}/correct"},
            params = "more")
    ModelAndView more(
            @PathVariable(name = "id", required = false) @Nullable Long receiver,
            @PathVariable(name = "old", required = false) @Nullable Long id,
            @ModelAttribute("form") InspectionForm form,
            UnitSet units) {
        Inspection old = id == null ? null : find(id);
        form.fill(units, ROWS);
        return page(
                vessel(old == null ? receiver : Long.valueOf(old.draft().receiverId())), old, new ModelAndView(FORM));
    }

    @PostMapping({"/receivers/{id}/inspections", "/inspections/{old}/correct"})
    ModelAndView save(
            @PathVariable(name = "id", required = false) @Nullable Long receiver,
            @PathVariable(name = "old", required = false) @Nullable Long id,
            @ModelAttribute("form") InspectionForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Inspection old = id == null ? null : find(id);
        Vessel vessel = vessel(old == null ? receiver : Long.valueOf(old.draft().receiverId()));
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<InspectionDraft> draft = new InspectionReader(sent).read(form, vessel);
        Correction correction = old == null
                ? null
                : new Typing(sent).correction(old.id(), form.getEdit().getReason(), form.getWithdrawn());
        var saved = sent.save("submission", by -> record.record(draft.orElseThrow(), correction, by.by()));
        return saved.isPresent() ? sent.accepted(vessel.page(), redirect) : page(vessel, old, sent.refused(FORM));
    }

    private Inspection find(long id) {
        return inspections.findById(id).orElseThrow(() -> new NoSuchRecord("inspection " + id));
    }

    private Vessel vessel(@Nullable Long id) {
        return Optional.ofNullable(id)
                .flatMap(receivers::findWithSiteById)
                .map(receiver -> Vessel.of(receiver, clock))
                .orElseThrow(() -> new NoSuchRecord("receiver " + id));
    }

    private static ModelAndView page(Vessel vessel, @Nullable Inspection old, ModelAndView page) {
        return page.addObject("vessel", vessel)
                .addObject("isCorrection", old != null)
                .addObject(
                        "target",
                        old == null ? vessel.page() + "/inspections" : "/inspections/" + old.id() + "/correct");
    }
}
