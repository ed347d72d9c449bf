package plantair.attachment.web;

import java.util.UUID;

/** Form bean of the withdrawal of a photo or paper. */
public final class AttachmentWithdrawalForm {

    private String submission = "";
    private String reason = "";

    static AttachmentWithdrawalForm blank() {
        var form = new AttachmentWithdrawalForm();
        form.submission = UUID.randomUUID().toString();
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getReason() {
        return reason;
    }

    public void setReason(String reason) {
        this.reason = reason;
    }
}
