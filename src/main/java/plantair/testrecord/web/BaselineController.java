package plantair.testrecord.web;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.maintenance.MaintenanceEvents;
import plantair.register.Submission;
import plantair.testrecord.ChooseBaseline;
import plantair.testrecord.Histories;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** Chooses the test that later ones are compared with. */
@Controller
final class BaselineController {

    private static final String FORM = "tests/baseline";

    private final Compressors compressors;
    private final Histories histories;
    private final MaintenanceEvents events;
    private final ChooseBaseline choose;
    private final Choices choices;

    BaselineController(
            Compressors compressors,
            Histories histories,
            MaintenanceEvents events,
            ChooseBaseline choose,
            Choices choices) {
        this.compressors = compressors;
        this.histories = histories;
        this.events = events;
        this.choose = choose;
        this.choices = choices;
    }

    @GetMapping("/compressors/{id}/baseline")
    ModelAndView blank(@PathVariable long id, @RequestParam(defaultValue = "") String test, UnitSet units) {
        Compressor compressor = find(id);
        return page(compressor, units, new ModelAndView(FORM, "form", BaselineForm.blank(test)));
    }

    @PostMapping("/compressors/{id}/baseline")
    ModelAndView save(
            @PathVariable long id,
            @ModelAttribute("form") BaselineForm form,
            BindingResult errors,
            UnitSet units,
            RedirectAttributes redirect,
            Person person) {
        Compressor compressor = find(id);
        var sent = new Submission(form.getEdit(), "", errors, person);
        var offer = BaselineOffer.of(histories.of(id), events.findCurrent(id));
        Optional<BaselineReader.Chosen> chosen = new BaselineReader(sent, offer).read(form);
        var saved = sent.save("submission", by -> {
            var choice = chosen.orElseThrow();
            return choose.choose(choice.submission(), choice.test(), choice.eventId(), by);
        });
        return saved.isPresent()
                ? sent.accepted("/compressors/" + id, redirect)
                : page(compressor, units, sent.refused(FORM));
    }

    private Compressor find(long id) {
        return compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
    }

    private ModelAndView page(Compressor compressor, UnitSet units, ModelAndView page) {
        MachineHistory history = histories.of(compressor.id());
        var offer = BaselineOffer.of(history, events.findCurrent(compressor.id()));
        return page.addObject("compressorId", compressor.id())
                .addObject("tag", compressor.tag())
                .addObject("site", compressor.site().name())
                .addObject(
                        "inForce",
                        history.baseline().map(test -> label(test, units)).orElse(""))
                .addObject(
                        "tests",
                        offer.tests().stream()
                                .map(test -> new Choice(String.valueOf(test.testId()), label(test, units)))
                                .toList())
                .addObject("events", labels(offer));
    }

    private List<Choice> labels(BaselineOffer offer) {
        return offer.events().stream()
                .map(event -> new Choice(
                        String.valueOf(event.id()),
                        event.happenedOn() + ", " + choices.label("event.kind", event.kind())))
                .toList();
    }

    private static String label(ResultLine test, UnitSet units) {
        return "%s, %s (%d)"
                .formatted(
                        test.date(),
                        QuantityFormat.of(units).flow(test.comparable().orElseThrow(), test.relativeRandom()),
                        test.testId());
    }
}
