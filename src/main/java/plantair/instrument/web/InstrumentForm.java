package plantair.instrument.web;

import java.util.Objects;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.quantity.FixedUnit;
import plantair.quantity.Unit;
import plantair.register.EditForm;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about an instrument. */
final class InstrumentForm {

    private String kind = "";
    private String tag = "";
    private String site = "";
    private String maker = "";
    private String serialNumber = "";
    private EnteredField span = new EnteredField();
    private String grade = "";
    private EnteredField gradePercent = EnteredField.blank(FixedUnit.PERCENT);
    private EnteredField accuracy = new EnteredField();
    private EnteredField division = new EnteredField();
    private String intervalMonths = "";
    private String note = "";
    private String inService = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static InstrumentForm blank(InstrumentKind kind, UnitSet units) {
        Unit unit = KindUnits.proposed(kind, units);
        var form = new InstrumentForm();
        form.kind = kind.name();
        form.span = EnteredField.blank(unit);
        form.accuracy = EnteredField.blank(unit);
        form.division = EnteredField.blank(unit);
        form.inService = "true";
        form.edit = new EditForm();
        return form;
    }

    static InstrumentForm from(Instrument instrument, UnitSet units) {
        var facts = instrument.facts();
        Unit unit = KindUnits.proposed(facts.kind(), units);
        var form = new InstrumentForm();
        form.kind = facts.kind().name();
        form.tag = facts.tag();
        form.site = facts.keptAt() == null ? "" : String.valueOf(facts.keptAt().id());
        form.maker = facts.maker();
        form.serialNumber = facts.serialNumber();
        form.span = EnteredField.of(facts.span(), unit);
        form.grade = facts.grade() == null ? "" : facts.grade().name();
        form.gradePercent = EnteredField.of(facts.gradePercent(), FixedUnit.PERCENT);
        form.accuracy = EnteredField.of(facts.accuracy(), unit);
        form.division = EnteredField.of(facts.division(), unit);
        form.intervalMonths = Objects.toString(facts.intervalMonths(), "");
        form.note = facts.note();
        form.inService = String.valueOf(facts.inService());
        form.edit = EditForm.of(instrument);
        return form;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getTag() {
        return tag;
    }

    public void setTag(String tag) {
        this.tag = tag;
    }

    public String getSite() {
        return site;
    }

    public void setSite(String site) {
        this.site = site;
    }

    public String getMaker() {
        return maker;
    }

    public void setMaker(String maker) {
        this.maker = maker;
    }

    public String getSerialNumber() {
        return serialNumber;
    }

    public void setSerialNumber(String serialNumber) {
        this.serialNumber = serialNumber;
    }

    public EnteredField getSpan() {
        return span;
    }

    public String getGrade() {
        return grade;
    }

    public void setGrade(String grade) {
        this.grade = grade;
    }

    public EnteredField getGradePercent() {
        return gradePercent;
    }

    public EnteredField getAccuracy() {
        return accuracy;
    }

    public EnteredField getDivision() {
        return division;
    }

    public String getIntervalMonths() {
        return intervalMonths;
    }

    public void setIntervalMonths(String intervalMonths) {
        this.intervalMonths = intervalMonths;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public String getInService() {
        return inService;
    }

    public void setInService(String inService) {
        this.inService = inService;
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
