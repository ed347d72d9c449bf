package plantair.maintenance.web;

import java.util.UUID;
import plantair.register.EditForm;

/** Who says that an event did not happen, and why. */
final class WithdrawForm {

    private String submission = "";
    private EditForm edit = new EditForm();

    static WithdrawForm blank() {
        var form = new WithdrawForm();
        form.submission = UUID.randomUUID().toString();
        form.edit = new EditForm();
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public EditForm getEdit() {
        return edit;
    }
}
