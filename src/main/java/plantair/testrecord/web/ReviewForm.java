package plantair.testrecord.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Form bean of the review of a test. */
public final class ReviewForm {

    private String submission = "";
    private String note = "";

    static ReviewForm blank() {
        var form = new ReviewForm();
        form.submission = UUID.randomUUID().toString();
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(@Nullable String submission) {
        this.submission = submission == null ? "" : submission;
    }

    public String getNote() {
        return note;
    }

    public void setNote(@Nullable String note) {
        this.note = note == null ? "" : note;
    }
}
