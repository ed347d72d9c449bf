package plantair.storage.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
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
import plantair.equipment.Receiver;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.supply.SwitchCycles;
import plantair.vessel.VesselLimit;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.QuantityFormat;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;
import plantair.web.Words;

/** What the receivers of a site can carry. Nothing is stored: the address holds the whole question. */
@Controller
class StorageController {

    private final Sites sites;
    private final StorageSites storage;
    private final StorageViews views;
    private final Choices choices;

    StorageController(Sites sites, StorageSites storage, StorageViews views, Choices choices) {
        this.sites = sites;
        this.storage = storage;
        this.views = views;
        this.choices = choices;
    }

    @GetMapping("/sites/{id}/storage")
    @Transactional(readOnly = true)
    public String storage(
            @PathVariable long id,
            @ModelAttribute("form") StorageForm form,
            BindingResult errors,
            UnitSet units,
            Model model,
            HttpServletResponse response) {
        Site site = sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
        StorageSite has = storage.of(site);
        boolean untouched = form.isUntouched();
        if (untouched) {
            has.fill(form, units);
        }
        form.propose(units);
        // what is not typed yet is for the person to fill in, not an error of theirs
        BindingResult found = untouched ? new BeanPropertyBindingResult(form, "form") : errors;
        new StorageReader(form, has, found)
                .read()
                .ifPresent(question -> model.addAttribute("storage", views.of(question, units)));
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        fill(model, site, has, QuantityFormat.of(units));
        return "storage/page";
    }

    private void fill(Model model, Site site, StorageSite has, QuantityFormat format) {
        model.addAttribute("siteId", site.id());
        model.addAttribute("siteName", site.name());
        model.addAttribute("events", has.events());
        model.addAttribute(
                "receiverChoices",
                has.receivers().stream()
                        .map(receiver -> new Choice(
                                String.valueOf(receiver.id()),
                                receiver.facts().tag() + ", " + receiver.facts().volume()))
                        .toList());
        model.addAttribute(
                "limits",
                has.receivers().stream().map(receiver -> limit(receiver, has)).toList());
        model.addAttribute(
                "machineChoices",
                has.measured().stream()
                        .map(machine -> has.choice(machine, format))
                        .toList());
        model.addAttribute("controls", choices.of("storage.control", SwitchCycles.Control.class));
        model.addAttribute("pressures", UnitChoices.pressure());
        model.addAttribute("flows", UnitChoices.flow());
        model.addAttribute("volumes", UnitChoices.volume());
        model.addAttribute("durations", UnitChoices.duration());
    }

    private static Words limit(Receiver receiver, StorageSite has) {
        return Optional.ofNullable(has.limits().get(receiver.id()))
                .map((VesselLimit limit) -> new Words(
                        "storage.limit." + limit.by().name(),
                        List.of(receiver.facts().tag(), limit.pressure().toString())))
                .orElse(Words.of("storage.limit.unknown", receiver.facts().tag()));
    }
}
