package plantair.testrecord.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorName;
import plantair.equipment.Compressors;
import plantair.testrecord.HoldSource;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.RecordTest;
import plantair.testrecord.TestDraft;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Person;
import plantair.web.Search;
import plantair.web.UnitSet;
import plantair.web.Warnings;

/** Records a new pump-up test. */
@Controller
class NewTestController {

    private static final String FORM = "tests/form";
    private static final int MACHINES = 50;

    private final Compressors compressors;
    private final PumpUpTests tests;
    private final RecordTest record;
    private final TestFormReader reader;
    private final TestFormPage page;
    private final HoldFromLeakTest holds;
    private final Clock clock;

    NewTestController(
            Compressors compressors,
            PumpUpTests tests,
            RecordTest record,
            TestFormReader reader,
            TestFormPage page,
            HoldFromLeakTest holds,
            Clock clock) {
        this.compressors = compressors;
        this.tests = tests;
        this.record = record;
        this.reader = reader;
        this.page = page;
        this.holds = holds;
        this.clock = clock;
    }

    /** Which machine? */
    @GetMapping("/tests/new")
    @Transactional(readOnly = true)
    public String choose(
            @RequestParam(required = false) @Nullable Long compressor,
            @ModelAttribute("search") Search search,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        if (compressor != null) {
            return "redirect:/compressors/" + compressor + "/tests/new";
        }
        Page<CompressorName> found =
                compressors.findInService(search.part(), PageRequest.of(Paging.index(page), MACHINES));
        model.addAttribute("machines", found.getContent());
        model.addAttribute(
                "paging", new Paging(search.address("/tests/new"), page, MACHINES, found.getTotalElements()));
        return "tests/choose";
    }

    @GetMapping("/compressors/{id}/tests/new")
    @Transactional(readOnly = true)
    public String form(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Long leakTest,
            UnitSet units,
            Person person,
            Model model) {
        Compressor compressor = find(id);
        Optional<HoldSource.Hold> hold = Optional.ofNullable(leakTest).flatMap(named -> holds.find(named, id));
        Optional<PumpUpTest> last = tests.findFirstByCompressorIdOrderByPerformedAtDescIdDesc(id);
        TestForm form = TestForm.blank(
                units,
                compressor.site().facts().zoneId(),
                clock,
                person.displayName(),
                hold.map(HoldSource.Hold::volumes)
                        .or(() -> last.map(PumpUpTest::volumes))
                        .orElse(List.of()));
        hold.ifPresent(found -> form.getChecks().fill(Objects.requireNonNull(leakTest), found));
        form.name(last.map(PumpUpTest::instruments).orElse(List.of()));
        model.addAttribute("form", form);
        page.fill(model, compressor, form);
        return FORM;
    }

    @PostMapping("/compressors/{id}/tests")
    @Transactional
    public String save(
            @PathVariable long id,
            @ModelAttribute("form") TestForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String action,
            UnitSet units,
            Person person,
            Model model,
            RedirectAttributes redirect,
            HttpServletResponse response) {
        Compressor compressor = find(id);
        if (action.equals("add-run")) {
            form.addRun(units);
            page.fill(model, compressor, form);
            return FORM;
        }
        if (action.equals("anywhere")) {
            form.setAnywhere("true");
            page.fill(model, compressor, form);
            return FORM;
        }
        Optional<TestDraft> draft = reader.read(form, compressor, errors);
        if (draft.isPresent()) {
            Warnings warnings = page.warnings(form, draft.get(), Optional.empty(), units);
            if (warnings.confirmedBy(form.getConfirmed())) {
                PumpUpTest test = record.record(draft.get().withConfirmed(warnings.token()), person.name());
                Flash.say(redirect, "test.saved");
                return "redirect:/tests/" + test.id();
            }
            model.addAttribute("warnings", warnings);
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        page.fill(model, compressor, form);
        return FORM;
    }

    private Compressor find(long id) {
        return compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
    }
}
