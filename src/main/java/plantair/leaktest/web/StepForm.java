package plantair.leaktest.web;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import plantair.leaktest.LeakStep;
import plantair.leaktest.StepKind;
import plantair.register.EditForm;
import plantair.register.Submission;

/** What a person types about what became of a leak. */
final class StepForm {

    private static final int LONGEST_NOTE = 1_000;

    private String submission = "";
    private String position = "";
    private String kind = "";
    private String doneOn = "";
    private String doneBy = "";
    private String note = "";
    private EditForm edit = new EditForm();

    /**
     * An empty form.
     *
     * @param steps number of steps so far
     */
    static StepForm blank(int steps, LocalDate today, String person) {
        var form = new StepForm();
        form.submission = UUID.randomUUID().toString();
        form.position = String.valueOf(steps);
        form.doneOn = today.toString();
        form.doneBy = person;
        return form;
    }

    /**
     * The step; empty when something is wrong with what was typed.
     *
     * @param foundOn no step is earlier
     */
    Optional<LeakStep.Draft> read(Submission sent, long leakId, LocalDate foundOn, LocalDate today) {
        var checks = sent.checks();
        var typing = new LeakTyping(sent);
        Optional<UUID> mark = typing.submission(submission);
        Optional<Integer> seen = checks.whole("position", position, 0, 1_000_000, true);
        Optional<StepKind> what = checks.choice("kind", kind, StepKind.class);
        Optional<LocalDate> day = typing.past("doneOn", doneOn, today);
        Optional<String> who = checks.text("doneBy", doneBy, 120, true);
        boolean isWithdrawal = what.filter(StepKind.WITHDRAWN::equals).isPresent();
        Optional<String> readNote = checks.text("note", note, LONGEST_NOTE, isWithdrawal);
        if (day.isPresent() && day.get().isBefore(foundOn)) {
            sent.reject("doneOn", "leakStep.doneOn.early", foundOn.toString());
        }
        if (sent.errors().hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(new LeakStep.Draft(
                mark.orElseThrow(),
                leakId,
                seen.orElseThrow(),
                what.orElseThrow(),
                day.orElseThrow(),
                who.orElseThrow(),
                readNote.orElse("")));
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getPosition() {
        return position;
    }

    public void setPosition(String position) {
        this.position = position;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getDoneOn() {
        return doneOn;
    }

    public void setDoneOn(String doneOn) {
        this.doneOn = doneOn;
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

    public EditForm getEdit() {
        return edit;
    }
}
