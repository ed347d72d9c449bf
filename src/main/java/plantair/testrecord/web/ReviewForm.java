package plantair.testrecord.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.web.Person;

/** Form bean of the review of a test. */
public final class ReviewForm {

    private String submission = "";
    private String reviewer = "";
    private String note = "";

    static ReviewForm blank(Person person) {
        var form = new ReviewForm();
        form.submission = UUID.randomUUID().toString();
        form.reviewer = person.name();
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(@Nullable String submission) {
        this.submission = submission == null ? "" : submission;
    }

    public String getReviewer() {
        return reviewer;
    }

    public void setReviewer(@Nullable String reviewer) {
        this.reviewer = reviewer == null ? "" : reviewer;
    }

    public String getNote() {
        return note;
    }

    public void setNote(@Nullable String note) {
        this.note = note == null ? "" : note;
    }
}
