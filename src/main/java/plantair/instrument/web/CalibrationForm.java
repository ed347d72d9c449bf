package plantair.instrument.web;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import plantair.instrument.Calibration;
import plantair.quantity.Unit;
import plantair.register.EditForm;

/** What a person types from a calibration certificate. */
final class CalibrationForm {

    private static final int ROWS = 3;

    private String submission = "";
    private String doneOn = "";
    private String dueOn = "";
    private String certificateNumber = "";
    private String laboratory = "";
    private String traceability = "";
    private final List<PointRow> points = new ArrayList<>();
    private String leftInOrder = "";
    private String note = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static CalibrationForm blank(Unit unit) {
        var form = new CalibrationForm();
        form.submission = UUID.randomUUID().toString();
        form.fill(unit);
        form.edit = new EditForm();
        return form;
    }

    /** For a correction. */
    static CalibrationForm from(Calibration calibration, Unit unit) {
        var certificate = calibration.certificate();
        var form = new CalibrationForm();
        form.submission = UUID.randomUUID().toString();
        form.doneOn = certificate.doneOn().toString();
        form.dueOn = certificate.dueOn().toString();
        form.certificateNumber = certificate.certificateNumber();
        form.laboratory = certificate.laboratory();
        form.traceability = certificate.traceability();
        calibration.points().forEach(point -> form.points.add(PointRow.from(point)));
        form.fill(unit);
        form.leftInOrder = certificate.leftInOrder() ? "YES" : "NO";
        form.note = certificate.note();
        form.edit = new EditForm();
        return form;
    }

    private void fill(Unit unit) {
        while (points.size() < ROWS) {
            points.add(PointRow.blank(unit));
        }
    }

    /** Offers one more point. */
    void addPoint(Unit unit) {
        if (hasRoom()) {
            points.add(PointRow.blank(unit));
        }
    }

    /** Whether one more point may be offered. */
    public boolean hasRoom() {
        return points.size() < PointRows.MOST;
    }

    public List<PointRow> getPoints() {
        return points;
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

    public String getDueOn() {
        return dueOn;
    }

    public void setDueOn(String dueOn) {
        this.dueOn = dueOn;
    }

    public String getCertificateNumber() {
        return certificateNumber;
    }

    public void setCertificateNumber(String certificateNumber) {
        this.certificateNumber = certificateNumber;
    }

    public String getLaboratory() {
        return laboratory;
    }

    public void setLaboratory(String laboratory) {
        this.laboratory = laboratory;
    }

    public String getTraceability() {
        return traceability;
    }

    public void setTraceability(String traceability) {
        this.traceability = traceability;
    }

    public String getLeftInOrder() {
        return leftInOrder;
    }

    public void setLeftInOrder(String leftInOrder) {
        this.leftInOrder = leftInOrder;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
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
