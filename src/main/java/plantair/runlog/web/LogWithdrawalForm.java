package plantair.runlog.web;

import java.util.UUID;

/** Form bean of the withdrawal of a logged run. */
public final class LogWithdrawalForm {

    private String submission = "";
    private String reason = "";

    static LogWithdrawalForm blank() {
        var form = new LogWithdrawalForm();
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
