package plantair.guided.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.guided.MachineFigures;
import plantair.web.UnitSet;

/** Form bean of a correction of readings. */
public final class CorrectionForm {

    private String submission = "";
    private String reason = "";
    private FiguresForm figures = new FiguresForm();

    static CorrectionForm of(MachineFigures old, UnitSet units) {
        var form = new CorrectionForm();
        form.submission = UUID.randomUUID().toString();
        form.figures = FiguresForm.of(old, units);
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(@Nullable String submission) {
        this.submission = submission == null ? "" : submission;
    }

    public String getReason() {
        return reason;
    }

    public void setReason(@Nullable String reason) {
        this.reason = reason == null ? "" : reason;
    }

    public FiguresForm getFigures() {
        return figures;
    }
}
