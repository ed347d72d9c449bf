package plantair.attachment.web;

import java.util.UUID;

/** Form bean of a photo or paper to be attached. */
public final class AttachmentForm {

    private String submission = "";
    private String description = "";

    static AttachmentForm blank() {
        var form = new AttachmentForm();
        form.submission = UUID.randomUUID().toString();
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getDescription() {
        return description;
    }

    public void setDescription(String description) {
        this.description = description;
    }

    /** A browser keeps no chosen file; only what is wrong with it stands beside its field. */
    public String getFile() {
        return "";
    }
}
