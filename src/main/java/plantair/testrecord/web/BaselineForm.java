package plantair.testrecord.web;

import java.util.UUID;
import plantair.register.EditForm;

/** Form bean of the choice of a baseline. */
final class BaselineForm {

    private String submission = "";
    private String test = "";
    private String event = "";
    private EditForm edit = new EditForm();

    static BaselineForm blank(String test) {
        var form = new BaselineForm();
        form.submission = UUID.randomUUID().toString();
        form.test = test;
        form.edit = new EditForm();
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getTest() {
        return test;
    }

    public void setTest(String test) {
        this.test = test;
    }

    public String getEvent() {
        return event;
    }

    public void setEvent(String event) {
        this.event = event;
    }

    public EditForm getEdit() {
        return edit;
    }
}
