package plantair.demand.web;

import plantair.demand.DemandKind;
import plantair.demand.SiteDemand;
import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.register.EditForm;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about something that takes air. */
final class DemandForm {

    private String label = "";
    private String kind = "";
    private String pieces = "";
    private AirForm air = new AirForm();
    private EnteredField eventLength = new EnteredField();
    private EnteredField eventEvery = new EnteredField();
    private EnteredField useFactor = new EnteredField();
    private EnteredField leastPressure = new EnteredField();
    private EnteredField reserve = new EnteredField();
    private EnteredField uncertainty = new EnteredField();
    private String note = "";
    private String inService = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static DemandForm blank(UnitSet units) {
        var form = new DemandForm();
        form.kind = DemandKind.TOOL.name();
        form.pieces = "1";
        form.air = AirForm.blank(units);
        form.eventLength = EnteredField.blank(DurationUnit.SECOND);
        form.eventEvery = EnteredField.blank(DurationUnit.MINUTE);
        form.useFactor = EnteredField.blank(FixedUnit.PERCENT);
        form.leastPressure = EnteredField.blank(units.pressure());
        form.reserve = EnteredField.blank(FixedUnit.PERCENT);
        form.uncertainty = EnteredField.blank(FixedUnit.PERCENT);
        form.inService = "true";
        return form;
    }

    static DemandForm from(SiteDemand item, UnitSet units) {
        var facts = item.facts();
        var form = new DemandForm();
        form.label = facts.label();
        form.kind = facts.kind().name();
        form.pieces = String.valueOf(facts.pieces());
        form.air = AirForm.from(facts, units);
        form.eventLength = EnteredField.of(facts.eventLength(), DurationUnit.SECOND);
        form.eventEvery = EnteredField.of(facts.eventEvery(), DurationUnit.MINUTE);
        form.useFactor = EnteredField.of(facts.useFactor(), FixedUnit.PERCENT);
        form.leastPressure = EnteredField.of(facts.leastPressure(), units.pressure());
        form.reserve = EnteredField.of(facts.reserve(), FixedUnit.PERCENT);
        form.uncertainty = EnteredField.of(facts.uncertainty(), FixedUnit.PERCENT);
        form.note = facts.note();
        form.inService = String.valueOf(facts.inService());
        form.edit = EditForm.of(item);
        return form;
    }

    public String getLabel() {
        return label;
    }

    public void setLabel(String label) {
        this.label = label;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getPieces() {
        return pieces;
    }

    public void setPieces(String pieces) {
        this.pieces = pieces;
    }

    public AirForm getAir() {
        return air;
    }

    public EnteredField getEventLength() {
        return eventLength;
    }

    public EnteredField getEventEvery() {
        return eventEvery;
    }

    public EnteredField getUseFactor() {
        return useFactor;
    }

    public EnteredField getLeastPressure() {
        return leastPressure;
    }

    public EnteredField getReserve() {
        return reserve;
    }

    public EnteredField getUncertainty() {
        return uncertainty;
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
