package plantair.maintenance.web;

import java.util.UUID;
import plantair.register.EditForm;
import plantair.web.Person;

/** Who says that an event did not happen, and why. */
final class WithdrawForm {

    private String submission = "";
    private EditForm edit = new EditForm();

    static WithdrawForm blank(Person person) {
        var form = new WithdrawForm();
        form.submission = UUID.randomUUID().toString();
        form.edit = EditForm.by(person);
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
