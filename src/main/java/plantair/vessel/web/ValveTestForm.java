package plantair.vessel.web;

import java.util.Optional;
import java.util.UUID;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.vessel.ReliefValve;
import plantair.vessel.TestMethod;
import plantair.vessel.ValveTest;
import plantair.vessel.ValveTestDraft;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a test of a relief valve. */
final class ValveTestForm {

    private String submission = "";
    private String doneOn = "";
    private String method = "";
    private EnteredField poppedAt = new EnteredField();
    private String passed = "";
    private String doneBy = "";
    private String note = "";
    private String withdrawn = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    /** The result. */
    enum Passed {
        YES,
        NO
    }

    static ValveTestForm blank(UnitSet units) {
        var form = new ValveTestForm();
        form.submission = UUID.randomUUID().toString();
        form.poppedAt = EnteredField.blank(units.pressure());
        return form;
    }

    /** For a correction. */
    static ValveTestForm from(ValveTest test, UnitSet units) {
        var draft = test.draft();
        var form = blank(units);
        form.doneOn = draft.doneOn().toString();
        form.method = draft.method().name();
        form.poppedAt = EnteredField.of(draft.poppedAt(), units.pressure());
        form.passed = (draft.passed() ? Passed.YES : Passed.NO).name();
        form.doneBy = draft.doneBy();
        form.note = draft.note();
        return form;
    }

    /** The test; empty when something is wrong with what was typed. */
    Optional<ValveTestDraft> read(Submission sent, ReliefValve valve, Vessel vessel) {
        var checks = sent.checks();
        var typing = new Typing(sent);
        var mark = typing.submission(submission);
        var day = typing.past("doneOn", doneOn, vessel.today(), true);
        var how = checks.choice("method", method, TestMethod.class);
        var popped = typing.pressure("poppedAt", poppedAt, false);
        var result = checks.choice("passed", passed, Passed.class);
        var who = checks.text("doneBy", doneBy, 120, true);
        var readNote = checks.text("note", note, 4_000, false);
        if (mark.isEmpty() || day.isEmpty() || how.isEmpty() || result.isEmpty() || who.isEmpty()) {
            return Optional.empty();
        }
        popped.ifPresent(typed -> typing.askFar("poppedAt", typed, valve.facts().setPressure()));
        return Optional.of(new ValveTestDraft(
                mark.get(),
                valve.id(),
                day.get(),
                how.get(),
                popped.orElse(null),
                result.get() == Passed.YES,
                who.get(),
                readNote.orElse("")));
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getDoneOn() {
        return doneOn;
    }

    public void setDoneOn(String doneOn) {
        this.doneOn = doneOn;
    }

    public String getMethod() {
        return method;
    }

    public void setMethod(String method) {
        this.method = method;
    }

    public EnteredField getPoppedAt() {
        return poppedAt;
    }

    public String getPassed() {
        return passed;
    }

    public void setPassed(String passed) {
        this.passed = passed;
    }

    public String getDoneBy() {
        return doneBy;
    }

    public void setDoneBy(String doneBy) {
        this.doneBy = doneBy;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public String getWithdrawn() {
        return withdrawn;
    }

    public void setWithdrawn(String withdrawn) {
        this.withdrawn = withdrawn;
    }

    public String getConfirmed() {
        return confirmed;
    }

    public void setConfirmed(String confirmed) {
        this.confirmed = confirmed;
    }

    public EditForm getEdit() {
        return edit;
    }
}
