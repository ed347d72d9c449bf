package plantair.testrecord.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
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
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ReviewTest;
import plantair.testrecord.TestReviews;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** Lets a second person look at a test and sign that it may stand. */
@Controller
class ReviewController {

    private static final String FORM = "tests/review";

    private final PumpUpTests tests;
    private final TestReviews reviews;
    private final ReviewTest review;
    private final TestViews views;

    ReviewController(PumpUpTests tests, TestReviews reviews, ReviewTest review, TestViews views) {
        this.tests = tests;
        this.reviews = reviews;
        this.review = review;
        this.views = views;
    }

    @GetMapping("/tests/{id}/review")
    @Transactional(readOnly = true)
    public String form(@PathVariable long id, UnitSet units, Locale locale, Model model) {
        PumpUpTest test = find(id);
        if (isSettled(id)) {
            return "redirect:/tests/" + id;
        }
        model.addAttribute("form", ReviewForm.blank());
        return show(test, units, locale, model);
    }

    @PostMapping("/tests/{id}/review")
    @Transactional
    public String sign(
            @PathVariable long id,
            @ModelAttribute("form") ReviewForm form,
            BindingResult errors,
            UnitSet units,
            Person person,
            Locale locale,
            Model model,
            RedirectAttributes redirect,
            HttpServletResponse response) {
        PumpUpTest test = find(id);
        if (isSettled(id)) {
            Flash.say(redirect, "review.settled");
            return "redirect:/tests/" + id;
        }
        var checks = new FieldChecks(errors);
        Optional<String> note = checks.text("note", form.getNote(), 1000, false);
        ReviewTest.refusal(test, person.name()).ifPresent(refusal -> errors.reject("review.own." + refusal));
        Optional<UUID> submission = submission(form, errors);
        if (errors.hasErrors() || submission.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return show(test, units, locale, model);
        }
        review.review(id, submission.get(), note.orElse(""), person.name());
        Flash.say(redirect, "review.signed");
        return "redirect:/tests/" + id;
    }

    /** Reviewed already, or superseded: there is nothing left to sign. */
    private boolean isSettled(long id) {
        return reviews.findByTestId(id).isPresent()
                || tests.findBySupersedesId(id).isPresent();
    }

    private static Optional<UUID> submission(ReviewForm form, BindingResult errors) {
        try {
            return Optional.of(UUID.fromString(form.getSubmission()));
        } catch (IllegalArgumentException notMadeByTheForm) {
            errors.reject("review.submission");
            return Optional.empty();
        }
    }

    private String show(PumpUpTest test, UnitSet units, Locale locale, Model model) {
        model.addAttribute("test", views.view(test, units, locale));
        model.addAttribute("look", ReviewView.of(test, views.words(units, locale)));
        return FORM;
    }

    private PumpUpTest find(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
    }
}
