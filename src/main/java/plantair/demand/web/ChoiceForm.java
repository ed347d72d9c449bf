package plantair.demand.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.demand.SupplyChoice;
import plantair.quantity.FixedUnit;
import plantair.register.EditForm;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about how a site reckons its supply. */
final class ChoiceForm {

    private EnteredField workingPressure = new EnteredField();
    private List<String> standby = new ArrayList<>();
    private String leaksFrom = "";
    private EnteredField leaks = new EnteredField();
    private EnteredField leaksUncertainty = new EnteredField();
    private EnteredField reserve = new EnteredField();
    private EnteredField uncertainty = new EnteredField();
    private String note = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static ChoiceForm from(SupplyChoice choice, UnitSet units) {
        var facts = choice.facts();
        var form = new ChoiceForm();
        form.workingPressure = EnteredField.of(facts.workingPressure(), units.pressure());
        form.standby = facts.standby().stream()
                .map(machine -> String.valueOf(machine.compressorId()))
                .toList();
        form.leaksFrom = facts.leaksFrom().name();
        form.leaks = EnteredField.of(facts.leaks(), units.flow());
        form.leaksUncertainty = EnteredField.of(facts.leaksUncertainty(), FixedUnit.PERCENT);
        form.reserve = EnteredField.of(facts.reserve(), FixedUnit.PERCENT);
        form.uncertainty = EnteredField.of(facts.uncertainty(), FixedUnit.PERCENT);
        form.note = facts.note();
        form.edit = EditForm.of(choice);
        return form;
    }

    public EnteredField getWorkingPressure() {
        return workingPressure;
    }

    public List<String> getStandby() {
        return standby;
    }

    public void setStandby(@Nullable List<String> standby) {
        this.standby = standby == null ? new ArrayList<>() : standby;
    }

    public String getLeaksFrom() {
        return leaksFrom;
    }

    public void setLeaksFrom(String leaksFrom) {
        this.leaksFrom = leaksFrom;
    }

    public EnteredField getLeaks() {
        return leaks;
    }

    public EnteredField getLeaksUncertainty() {
        return leaksUncertainty;
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
