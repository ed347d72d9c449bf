package plantair.equipment.web;

import java.util.Optional;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.PipeFacts;
import plantair.equipment.PipePiece;
import plantair.equipment.PipePieces;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Person;
import plantair.web.Search;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Adds pipe pieces, lists them and changes what is said of them. */
@Controller
final class PipeController {

    private static final String FORM = "pipes/form";
    private static final int ROWS = 50;

    private final PipePieces pipes;
    private final Register<PipeFacts, PipePiece> register;
    private final SiteList sites;

    PipeController(PipePieces pipes, Register<PipeFacts, PipePiece> register, SiteList sites) {
        this.pipes = pipes;
        this.register = register;
        this.sites = sites;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("sites", sites.choices());
        model.addAttribute("volumes", UnitChoices.volume());
        model.addAttribute("lengths", UnitChoices.elevation());
        model.addAttribute("bores", UnitChoices.bore());
    }

    @GetMapping("/pipes")
    String list(
            @ModelAttribute("search") Search search,
            @RequestParam(defaultValue = "1") int page,
            UnitSet units,
            Model model) {
        var rows = pipes.findByPartOfTag(search.part(), PageRequest.of(Paging.index(page), ROWS));
        model.addAttribute("paging", new Paging(search.address("/pipes"), page, ROWS, rows.getTotalElements()));
        model.addAttribute(
                "pipes", rows.map(row -> PipeView.of(row, row.site(), units)).getContent());
        return "pipes/list";
    }

    @GetMapping("/pipes/new")
    ModelAndView blank(@RequestParam(defaultValue = "") String site, UnitSet units) {
        return new ModelAndView(FORM, "form", PipeForm.blank(site, units));
    }

    @PostMapping("/pipes")
    ModelAndView add(
            @ModelAttribute("form") PipeForm form, BindingResult errors, RedirectAttributes redirect, Person person) {
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<Site> site = sites.read(sent, form.getSite());
        Optional<PipeFacts> facts = form.read(sent);
        site.ifPresent(chosen -> checkTag(sent, facts, chosen.id(), 0));
        var saved = sent.save(
                "tag",
                by -> register.add(new PipePiece(site.orElseThrow(), facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted("/sites/" + site.orElseThrow().id(), redirect) : sent.refused(FORM);
    }

    @GetMapping("/pipes/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        PipePiece pipe = find(id);
        return page(pipe, new ModelAndView(FORM, "form", PipeForm.from(pipe, units)));
    }

    @PostMapping("/pipes/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") PipeForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        PipePiece pipe = find(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<PipeFacts> facts = form.read(sent);
        checkTag(sent, facts, pipe.site().id(), id);
        sent.change(register, pipe, facts);
        var saved =
                sent.save("tag", by -> register.revise(id, pipe.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent()
                ? sent.accepted("/sites/" + pipe.site().id(), redirect)
                : page(pipe, sent.refused(FORM));
    }

    private PipePiece find(long id) {
        return pipes.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("pipe " + id));
    }

    private static ModelAndView page(PipePiece pipe, ModelAndView page) {
        String tag = pipe.facts().tag();
        return page.addObject("changed", Subject.of(pipe.id(), tag, pipe.site()));
    }

    private void checkTag(Submission sent, Optional<PipeFacts> facts, long site, long id) {
        if (facts.isPresent()
                && pipes.existsBySiteIdAndFactsTagIgnoreCaseAndIdNot(
                        site, facts.get().tag(), id)) {
            sent.reject("tag", "register.taken");
        }
    }
}
