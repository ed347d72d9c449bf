package plantair.due.web;

import java.util.Objects;
import java.util.Optional;
import plantair.due.DueInterval;
import plantair.due.IntervalFacts;
import plantair.register.EditForm;
import plantair.register.Submission;

/** What a person types about an interval. */
final class IntervalForm {

    private static final int MOST_MONTHS = 240;

    private String months = "";
    private String authority = "";
    private EditForm edit = new EditForm();

    static IntervalForm of(DueInterval interval) {
        var form = new IntervalForm();
        form.months = Objects.toString(interval.facts().months(), "");
        form.authority = interval.facts().authority();
        form.edit = EditForm.of(interval);
        return form;
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<IntervalFacts> read(Submission sent, DueInterval seen) {
        var readMonths = sent.checks().whole("months", months, 1, MOST_MONTHS, false);
        var named = sent.checks().text("authority", authority, 400, false);
        return sent.errors().hasErrors()
                ? Optional.empty()
                : Optional.of(
                        new IntervalFacts(seen.facts().site(), seen.kind(), readMonths.orElse(null), named.orElse("")));
    }

    public String getMonths() {
        return months;
    }

    public void setMonths(String months) {
        this.months = months;
    }

    public String getAuthority() {
        return authority;
    }

    public void setAuthority(String authority) {
        this.authority = authority;
    }

    public EditForm getEdit() {
        return edit;
    }
}
