package plantair.testrecord.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
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
import plantair.equipment.Compressors;
import plantair.testrecord.CorrectionReason;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.RecordTest;
import plantair.testrecord.TestDraft;
import plantair.testrecord.TestReviews;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;
import plantair.web.Warnings;

/** Corrects a test by a new one that takes its place; the old one stays readable. */
@Controller
class SupersedeController {

    private static final String FORM = "tests/supersede";
    private static final int LONGEST_REASON = 1000;

    private final PumpUpTests tests;
    private final TestReviews reviews;
    private final Compressors compressors;
    private final RecordTest record;
    private final TestFormReader reader;
    private final TestFormPage page;

    SupersedeController(
            PumpUpTests tests,
            TestReviews reviews,
            Compressors compressors,
            RecordTest record,
            TestFormReader reader,
            TestFormPage page) {
        this.tests = tests;
        this.reviews = reviews;
        this.compressors = compressors;
        this.record = record;
        this.reader = reader;
        this.page = page;
    }

    @GetMapping("/tests/{id}/supersede")
    @Transactional(readOnly = true)
    public String form(@PathVariable long id, UnitSet units, Person person, Model model, RedirectAttributes redirect) {
        PumpUpTest test = find(id);
        Optional<PumpUpTest> later = tests.findBySupersedesId(id);
        if (later.isPresent()) {
            return "redirect:/tests/" + later.get().id();
        }
        if (isLocked(id, person)) {
            Flash.say(redirect, "review.lock.closed");
            return "redirect:/tests/" + id;
        }
        TestForm form = TestForm.from(test, units);
        model.addAttribute("form", form);
        return show(model, test, form);
    }

    @PostMapping("/tests/{id}/supersede")
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
        PumpUpTest old = find(id);
        if (action.equals("add-run")) {
            form.addRun(units);
            return show(model, old, form);
        }
        if (action.equals("anywhere")) {
            form.setAnywhere("true");
            return show(model, old, form);
        }
        compressors.findLockedById(old.compressor().id()); // so that nobody reviews the test meanwhile
        var checks = new FieldChecks(errors);
        if (isLocked(id, person)) {
            errors.reject("review.lock.closed");
        }
        Optional<CorrectionReason> reason =
                reason(form, checks, reviews.findByTestId(id).isPresent());
        Optional<TestDraft> draft = reader.read(form, old.compressor(), errors);
        if (draft.isPresent() && reason.isPresent() && !errors.hasErrors()) {
            Warnings warnings = page.warnings(form, draft.get(), Optional.of(id), units);
            if (warnings.confirmedBy(form.getConfirmed())) {
                PumpUpTest test =
                        record.supersede(old, draft.get().withConfirmed(warnings.token()), reason.get(), person.name());
                Flash.say(redirect, "test.superseded");
                return "redirect:/tests/" + test.id();
            }
            model.addAttribute("warnings", warnings);
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return show(model, old, form);
    }

    /** A reviewed test is locked for whoever may not manage. */
    private boolean isLocked(long id, Person person) {
        return !person.mayManage() && reviews.findByTestId(id).isPresent();
    }

    /** A reviewed test is locked: correcting it needs a reason of its own, which goes on record with the other. */
    private static Optional<CorrectionReason> reason(TestForm form, FieldChecks checks, boolean reviewed) {
        if (!reviewed) {
            return checks.text("reason", form.getReason(), LONGEST_REASON, true).map(CorrectionReason::of);
        }
        Optional<String> reason = checks.text("reason", form.getReason(), LONGEST_REASON / 2, true);
        Optional<String> lock = checks.text("lockReason", form.getLockReason(), LONGEST_REASON / 2 - 30, true);
        return reason.flatMap(why -> lock.map(whyNow -> new CorrectionReason(why, whyNow)));
    }

    private String show(Model model, PumpUpTest old, TestForm form) {
        model.addAttribute(
                "review", reviews.findByTestId(old.id()).map(ReviewMark::of).orElse(null));
        page.fill(model, old.compressor(), form);
        model.addAttribute("oldId", old.id());
        return FORM;
    }

    private PumpUpTest find(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
    }
}
