package plantair.vessel.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import plantair.register.EditForm;
import plantair.vessel.Inspection;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types from the report of an inspector. */
final class InspectionForm {

    private String submission = "";
    private String kind = "";
    private String doneOn = "";
    private String inspector = "";
    private String employer = "";
    private String findings = "";
    private EnteredField reducedMawp = new EnteredField();
    private String nextDue = "";
    private String instrument = "";
    private EnteredField accuracy = new EnteredField();
    private final List<WallRow> readings = new ArrayList<>();
    private String withdrawn = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    /** As many as a form offers: two on each head, two on top, two below, and as many again. */
    static final int MOST_READINGS = 40;

    static InspectionForm blank(UnitSet units, int rows) {
        var form = new InspectionForm();
        form.submission = UUID.randomUUID().toString();
        form.reducedMawp = EnteredField.blank(units.pressure());
        form.accuracy = EnteredField.blank(units.bore());
        form.fill(units, rows);
        return form;
    }

    /** For a correction. */
    static InspectionForm from(Inspection inspection, UnitSet units) {
        var report = inspection.draft().report();
        var form = blank(units, 0);
        form.kind = report.kind().name();
        form.doneOn = report.doneOn().toString();
        form.inspector = report.inspector();
        form.employer = report.employer();
        form.findings = report.findings();
        form.reducedMawp = EnteredField.of(report.reducedMawp(), units.pressure());
        form.nextDue = Objects.toString(report.nextDue(), "");
        form.instrument = report.instrument();
        form.accuracy = EnteredField.of(report.accuracy(), units.bore());
        inspection.draft().readings().forEach(reading -> form.readings.add(WallRow.from(reading, units)));
        return form;
    }

    /** Offers more rows. */
    void fill(UnitSet units, int more) {
        for (int i = 0; i < more && hasRoom(); i++) {
            readings.add(WallRow.blank(units));
        }
    }

    /** Whether one more row may be offered. */
    public boolean hasRoom() {
        return readings.size() < MOST_READINGS;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
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

    public String getInspector() {
        return inspector;
    }

    public void setInspector(String inspector) {
        this.inspector = inspector;
    }

    public String getEmployer() {
        return employer;
    }

    public void setEmployer(String employer) {
        this.employer = employer;
    }

    public String getFindings() {
        return findings;
    }

    public void setFindings(String findings) {
        this.findings = findings;
    }

    public EnteredField getReducedMawp() {
        return reducedMawp;
    }

    public String getNextDue() {
        return nextDue;
    }

    public void setNextDue(String nextDue) {
        this.nextDue = nextDue;
    }

    public String getInstrument() {
        return instrument;
    }

    public void setInstrument(String instrument) {
        this.instrument = instrument;
    }

    public EnteredField getAccuracy() {
        return accuracy;
    }

    public List<WallRow> getReadings() {
        return readings;
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
