package plantair.maintenance.web;

import java.util.UUID;
import plantair.maintenance.MaintenanceEvent;
import plantair.register.EditForm;

/** What a person types about work on a machine. */
final class EventForm {

    private String submission = "";
    private String happenedOn = "";
    private String kind = "";
    private String mayStep = "";
    private String doneBy = "";
    private String note = "";
    private EditForm edit = new EditForm();

    static EventForm blank() {
        var form = new EventForm();
        form.submission = UUID.randomUUID().toString();
        form.edit = new EditForm();
        return form;
    }

    /** For a correction. */
    static EventForm from(MaintenanceEvent event) {
        var form = blank();
        form.happenedOn = event.happenedOn().toString();
        form.kind = event.kind().name();
        form.mayStep = (event.mayStep() ? EventReader.Step.YES : EventReader.Step.NO).name();
        form.doneBy = event.doneBy();
        form.note = event.note();
        return form;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getHappenedOn() {
        return happenedOn;
    }

    public void setHappenedOn(String happenedOn) {
        this.happenedOn = happenedOn;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getMayStep() {
        return mayStep;
    }

    public void setMayStep(String mayStep) {
        this.mayStep = mayStep;
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
